package org.slatwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Names files that lie among those of a plan and were not written with it. */
final class LeftoverText {

  private static final int MOST_NAMES = 3;

  private LeftoverText() {}

  /** One line with a few of them and how many more; nothing where there are none. */
  static Optional<String> of(List<Path> leftovers) {
    if (leftovers.isEmpty()) {
      return Optional.empty();
    }
    String names =
        leftovers.stream().limit(MOST_NAMES).map(Path::toString).collect(Collectors.joining(", "));
    int more = leftovers.size() - MOST_NAMES;
    return Optional.of(
        "note: left from before, not written now: "
            + names
            + (more > 0 ? " and " + more + " more" : ""));
  }
}
