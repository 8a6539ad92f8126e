package org.slatwright.design.steps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Step;

class ScheduleTest {

  @Test
  void somethingElseIsDoneWhileTheGlueCures() {
    Task glue = Task.named("glue", "").takes(10).waits(new Minutes(60), "").endsWhen("");
    Task other = Task.named("other", "").takes(30).endsWhen("");
    Task drill = Task.named("drill", "").takes(10).after("glue").endsWhen("");

    OrderOfWork order = Schedule.of(List.of(other, glue, drill));

    assertEquals(List.of("glue", "other", "drill"), ids(order));
    assertEquals(new Minutes(50), order.work());
    assertEquals(new Minutes(80), order.elapsed());
  }

  @Test
  void whatNeedsOnlyTheWorkDoesNotWait() {
    Task unclamp = Task.named("unclamp", "").takes(10).waits(new Minutes(600), "").endsWhen("");
    Task next = Task.named("next", "").takes(20).meanwhile("unclamp").endsWhen("");

    assertEquals(new Minutes(30), Schedule.of(List.of(unclamp, next)).elapsed());
  }

  @Test
  void tasksOnWhichNothingHangsKeepTheirOrder() {
    List<Task> alike =
        IntStream.range(0, 5)
            .mapToObj(i -> Task.named("task-" + i, "").takes(10).endsWhen(""))
            .toList();

    assertEquals(alike.stream().map(Task::id).toList(), ids(Schedule.of(alike)));
  }

  @Test
  void aTaskIsToldAfterWhatItNeeds() {
    Task early = Task.named("early", "").after("late").endsWhen("");
    Task late = Task.named("late", "").endsWhen("");

    assertThrows(IllegalArgumentException.class, () -> Schedule.of(List.of(early, late)));
    assertThrows(IllegalArgumentException.class, () -> Schedule.of(List.of(late, late)));
  }

  @Property
  void noTaskBeginsBeforeWhatItNeedsIsDoneAndHasWaited(@ForAll("tasks") List<Task> tasks) {
    OrderOfWork order = Schedule.of(tasks);

    assertEquals(tasks.size(), order.steps().size());
    assertEquals(order.elapsed().count(), elapsed(tasks, ids(order)));
  }

  /**
   * Graham 1969, bounds on list scheduling, for one machine: hands are idle only while the longest
   * chain waits, so all work and the waiting of one chain bound the time; from memory.
   */
  @Property
  void handsAreIdleOnlyWhileAChainWaits(@ForAll("tasks") List<Task> tasks) {
    OrderOfWork order = Schedule.of(tasks);

    int chain = longest(tasks, false);
    assertTrue(order.elapsed().count() >= Math.max(order.work().count(), longest(tasks, true)));
    assertTrue(order.elapsed().count() <= order.work().count() + chain);
  }

  @Property
  void fewTasksTakeLessThanTwiceAsLongAsTheBestOrder(@ForAll("fewTasks") List<Task> tasks) {
    int best = best(tasks, new ArrayList<>());

    int ours = Schedule.of(tasks).elapsed().count();

    assertTrue(ours >= best);
    assertTrue(ours < 2 * best, () -> ours + " against " + best);
  }

  /** Of every order that is allowed, the one that takes least. */
  private static int best(List<Task> tasks, List<String> begun) {
    if (begun.size() == tasks.size()) {
      return elapsed(tasks, begun);
    }
    int best = Integer.MAX_VALUE;
    for (Task task : tasks) {
      boolean open =
          !begun.contains(task.id())
              && task.needs().stream().allMatch(need -> begun.contains(need.id()));
      if (open) {
        List<String> more = new ArrayList<>(begun);
        more.add(task.id());
        best = Math.min(best, best(tasks, more));
      }
    }
    return best;
  }

  /** Worked through by the clock, apart from the schedule. */
  private static int elapsed(List<Task> tasks, List<String> order) {
    Map<String, Integer> worked = new HashMap<>();
    int clock = 0;
    for (String id : order) {
      Task task = named(tasks, id);
      for (Task.Need need : task.needs()) {
        int pause = need.waits() ? waiting(named(tasks, need.id())) : 0;
        clock = Math.max(clock, worked.get(need.id()) + pause);
      }
      clock += task.work().count();
      worked.put(id, clock);
    }
    return clock;
  }

  /** The longest chain of needs, counting its waits, and its work where asked. */
  private static int longest(List<Task> tasks, boolean work) {
    Map<String, Integer> ends = new HashMap<>();
    for (Task task : tasks) {
      int begin = 0;
      for (Task.Need need : task.needs()) {
        int pause = need.waits() ? waiting(named(tasks, need.id())) : 0;
        begin = Math.max(begin, ends.get(need.id()) + pause);
      }
      ends.put(task.id(), begin + (work ? task.work().count() : 0));
    }
    return ends.values().stream().mapToInt(Integer::intValue).max().orElse(0);
  }

  private static Task named(List<Task> tasks, String id) {
    return tasks.stream().filter(task -> task.id().equals(id)).findFirst().orElseThrow();
  }

  private static int waiting(Task task) {
    return task.then().map(wait -> wait.time().count()).orElse(0);
  }

  private static List<String> ids(OrderOfWork order) {
    return order.steps().stream().map(Step::id).toList();
  }

  @Provide
  Arbitrary<List<Task>> tasks() {
    return Arbitraries.integers().between(1, 25).flatMap(ScheduleTest::tasks);
  }

  @Provide
  Arbitrary<List<Task>> fewTasks() {
    return Arbitraries.integers().between(1, 6).flatMap(ScheduleTest::tasks);
  }

  private static Arbitrary<List<Task>> tasks(int count) {
    List<Arbitrary<Task>> each = IntStream.range(0, count).mapToObj(ScheduleTest::task).toList();
    return Combinators.combine(each).as(List::copyOf);
  }

  /** Needing any of those before it, waiting or not. */
  private static Arbitrary<Task> task(int number) {
    return Combinators.combine(
            Arbitraries.integers().between(1, 12),
            Arbitraries.of(0, 0, 60, 600),
            Arbitraries.integers()
                .between(0, Math.max(0, number - 1))
                .set()
                .ofMaxSize(Math.min(3, number)),
            Arbitraries.of(true, true, false))
        .as(
            (work, wait, needs, waits) -> {
              Task.Draft draft = Task.named("task-" + number, "").takes(work * 5);
              if (wait > 0) {
                draft.waits(new Minutes(wait), "it dries");
              }
              if (number > 0) {
                needs.stream()
                    .sorted()
                    .map(need -> "task-" + need)
                    .forEach(need -> need(draft, need, waits));
              }
              return draft.endsWhen("It is done.");
            });
  }

  private static void need(Task.Draft draft, String other, boolean waits) {
    if (waits) {
      draft.after(other);
    } else {
      draft.meanwhile(other);
    }
  }
}
