package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;

/**
 * What becomes of a rack file with one more setting. Whatever is proposed to the maker is tried
 * here on the whole rack, since what closes one chain may break another.
 */
record Trials(RackFile file) {

  /** The problems, each with those of its changes that do help. */
  List<Problem> proven(List<Problem> problems) {
    return problems.stream().map(problem -> proven(problem, problems)).toList();
  }

  /** Whether a setting lets that thing in and keeps out none that was in. */
  boolean makesRoom(String setting, Misfit misfit, List<Misfit> before) {
    return with(setting)
        .filter(Sizing::closes)
        .map(Sizing::misfits)
        .filter(after -> after.stream().noneMatch(misfit::isLike))
        .filter(after -> after.stream().allMatch(left -> before.stream().anyMatch(left::isLike)))
        .isPresent();
  }

  private Problem proven(Problem problem, List<Problem> all) {
    List<Tried> helping =
        problem.changes().stream()
            .flatMap(change -> with(change.setting()).map(s -> new Tried(change, s)).stream())
            .filter(tried -> tried.leavesLessThan(all))
            .toList();
    List<Tried> best = helping.stream().filter(Tried::takesAll).toList();
    return new Problem(
        problem.place(),
        problem.message(),
        (best.isEmpty() ? helping : best).stream().map(Tried::change).toList());
  }

  /** Empty where the file could not even be read so. */
  private Optional<Sizing> with(String setting) {
    try {
      return Optional.of(Sizing.of(file.with(setting)));
    } catch (RackFileException e) {
      return Optional.empty();
    }
  }

  private record Tried(Problem.Change change, Sizing sizing) {

    /** Fewer problems, and none where there was none: the only one must go. */
    boolean leavesLessThan(List<Problem> before) {
      List<Place> places = before.stream().map(Problem::place).toList();
      List<Problem> left = sizing.problems();
      return left.size() < before.size()
          && left.stream().map(Problem::place).allMatch(places::contains);
    }

    boolean takesAll() {
      return sizing.misfits().isEmpty();
    }
  }
}
