package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Step;

/**
 * Puts tasks in an order for one pair of hands: whenever they are free, of all tasks that could
 * begin the one that most still hangs on is begun (list scheduling by the longest path, work and
 * waiting together), so that glue cures while something else is done.
 */
final class Schedule {

  /** Each after all that it needs. */
  private final List<Task> tasks;

  /** From the beginning of a task to the end of the last that hangs on it, in minutes. */
  private final Map<String, Integer> hanging = new HashMap<>();

  private final Map<String, Step> done = new LinkedHashMap<>();
  private final Map<String, Integer> usable = new HashMap<>();
  private int now;

  private Schedule(List<Task> tasks) {
    this.tasks = List.copyOf(tasks);
  }

  /**
   * The order. Of tasks on which as much hangs the one that is told first comes first.
   *
   * @param tasks each told after those that it needs
   * @throws IllegalArgumentException when one is not
   */
  static OrderOfWork of(List<Task> tasks) {
    Schedule schedule = new Schedule(tasks);
    schedule.requireNeedsFirst();
    schedule.reckonHanging();
    return schedule.order();
  }

  private void requireNeedsFirst() {
    List<String> told = new ArrayList<>();
    for (Task task : tasks) {
      List<String> needs = task.needs().stream().map(Task.Need::id).toList();
      if (told.contains(task.id()) || !told.containsAll(needs)) {
        throw new IllegalArgumentException(task.id() + " is told twice or before one of " + needs);
      }
      told.add(task.id());
    }
  }

  private void reckonHanging() {
    for (int i = tasks.size() - 1; i >= 0; i--) {
      Task task = tasks.get(i);
      hanging.put(task.id(), task.work().count() + Math.max(waiting(task), later(task)));
    }
  }

  private int later(Task task) {
    int later = 0;
    for (Task next : tasks) {
      for (Task.Need need : next.needs()) {
        if (need.id().equals(task.id())) {
          int pause = need.waits() ? waiting(task) : 0;
          later = Math.max(later, pause + hanging.get(next.id()));
        }
      }
    }
    return later;
  }

  private OrderOfWork order() {
    while (done.size() < tasks.size()) {
      List<Task> open = tasks.stream().filter(this::isOpen).toList();
      now = Math.max(now, open.stream().mapToInt(this::begins).min().orElseThrow());
      open.stream()
          .filter(task -> begins(task) <= now)
          .min(Comparator.comparingInt(task -> -hanging.get(task.id())))
          .ifPresent(this::begin);
    }
    int work = tasks.stream().mapToInt(task -> task.work().count()).sum();
    return new OrderOfWork(List.copyOf(done.values()), new Minutes(work), new Minutes(now));
  }

  private boolean isOpen(Task task) {
    return !done.containsKey(task.id())
        && task.needs().stream().allMatch(need -> done.containsKey(need.id()));
  }

  private int begins(Task task) {
    return task.needs().stream()
        .filter(Task.Need::waits)
        .mapToInt(need -> usable.get(need.id()))
        .max()
        .orElse(0);
  }

  private void begin(Task task) {
    List<Integer> after =
        task.needs().stream()
            .map(need -> done.get(need.id()).number())
            .distinct()
            .sorted()
            .toList();
    done.put(task.id(), task.numbered(done.size() + 1, after));
    now += task.work().count();
    usable.put(task.id(), now + waiting(task));
  }

  private static int waiting(Task task) {
    return task.then().map(wait -> wait.time().count()).orElse(0);
  }
}
