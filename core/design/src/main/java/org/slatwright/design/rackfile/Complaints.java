package org.slatwright.design.rackfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what is wrong, so that one run tells the maker all of it. */
final class Complaints {

  private static final int MOST = 50;

  private final List<String> settings;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * Of a reading with these settings, whose complaints come after the file's.
   *
   * @param settings the sources of their places, in the order given
   */
  Complaints(List<String> settings) {
    this.settings = List.copyOf(settings);
  }

  void add(Place place, String message) {
    problems.add(new Problem(place, message));
  }

  /** All complaints so far and this one, after which reading cannot go on. */
  RackFileException fatal(Place place, String message) {
    add(place, message);
    return inFileOrder();
  }

  void throwIfAny() throws RackFileException {
    if (!problems.isEmpty()) {
      throw inFileOrder();
    }
  }

  private RackFileException inFileOrder() {
    Comparator<Problem> fileOrder =
        Comparator.comparing((Problem problem) -> settings.indexOf(problem.place().source()))
            .thenComparing(problem -> problem.place().line())
            .thenComparing(problem -> problem.place().column());
    List<Problem> sorted = problems.stream().distinct().sorted(fileOrder).toList();
    return new RackFileException(sorted.size() <= MOST ? sorted : shortened(sorted));
  }

  private static List<Problem> shortened(List<Problem> sorted) {
    List<Problem> listed = new ArrayList<>(sorted.subList(0, MOST));
    Place next = sorted.get(MOST).place();
    listed.add(new Problem(next, "and " + (sorted.size() - MOST) + " more from here on"));
    return listed;
  }
}
