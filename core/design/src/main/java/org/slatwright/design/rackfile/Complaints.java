package org.slatwright.design.rackfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what is wrong, so that one run tells the maker all of it. */
final class Complaints {

  private static final int MOST = 50;

  /** What a {@code --set} asks for comes after the file, in the order it was given. */
  private static final Comparator<Problem> FILE_ORDER =
      Comparator.comparing((Problem problem) -> isSetting(problem.place()))
          .thenComparing(problem -> problem.place().line())
          .thenComparing(problem -> problem.place().column());

  private final List<Problem> problems = new ArrayList<>();

  void add(Place place, String message) {
    problems.add(new Problem(place, message));
  }

  /** What can only be said now, and nothing after it. */
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
    List<Problem> sorted = problems.stream().distinct().sorted(FILE_ORDER).toList();
    if (sorted.size() <= MOST) {
      return new RackFileException(sorted);
    }
    List<Problem> listed = new ArrayList<>(sorted.subList(0, MOST));
    Place next = sorted.get(MOST).place();
    listed.add(new Problem(next, "and " + (sorted.size() - MOST) + " more problems from here on"));
    return new RackFileException(listed);
  }

  private static boolean isSetting(Place place) {
    return place.source().startsWith(Setting.OPTION);
  }
}
