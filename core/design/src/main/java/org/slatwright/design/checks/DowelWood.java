package org.slatwright.design.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;

/**
 * The wood that is left beside the dowel holes of a part, from their centres.
 *
 * @param name of what is measured, in words
 * @param part that is drilled
 * @param size of the wood
 * @param least of it there should be
 */
record DowelWood(String name, Part part, Length size, Length least) {

  /** That which is shortest of what it should be; empty in an assembly without dowels. */
  static Optional<DowelWood> scarcest(Assembly assembly) {
    return assembly.parts().stream()
        .flatMap(DowelWood::around)
        .min(Comparator.comparingDouble(DowelWood::share));
  }

  /** But for what halves of sections are rounded by. */
  boolean isEnough() {
    return size.inMm() >= least.inMm() - Rod.ROUNDING;
  }

  private double share() {
    return (double) size.nanometres() / least.nanometres();
  }

  private static Stream<DowelWood> around(Part part) {
    return Stream.of(part.holes().stream().flatMap(hole -> beside(part, hole)), betweenAll(part))
        .flatMap(found -> found);
  }

  private static Stream<DowelWood> beside(Part part, Hole hole) {
    if (!(part.shape() instanceof Shape.Bar bar)) {
      return Stream.empty();
    }
    return part.role() == Role.UPRIGHT ? inUpright(part, hole, bar) : inRailEnd(part, hole, bar);
  }

  private static Stream<DowelWood> inUpright(Part part, Hole hole, Shape.Bar bar) {
    Length end = hole.diameter().times(3);
    return Stream.of(
        edge(part, hole, hole.across()),
        edge(part, hole, bar.width().minus(hole.across())),
        new DowelWood("the lowest dowel to the foot", part, hole.along(), end),
        new DowelWood("the top dowel to the top", part, bar.length().minus(hole.along()), end));
  }

  private static Stream<DowelWood> inRailEnd(Part part, Hole hole, Shape.Bar bar) {
    return Stream.of(
        edge(part, hole, hole.along()),
        edge(part, hole, bar.width().minus(hole.along())),
        edge(part, hole, hole.across()),
        edge(part, hole, bar.thickness().minus(hole.across())));
  }

  private static DowelWood edge(Part part, Hole hole, Length size) {
    return new DowelWood(
        "a dowel to the nearest edge", part, size, hole.diameter().times(3).half());
  }

  private static Stream<DowelWood> betweenAll(Part part) {
    return part.holes().stream()
        .collect(Collectors.groupingBy(Hole::face, TreeMap::new, Collectors.toList()))
        .values()
        .stream()
        .flatMap(holes -> between(part, holes));
  }

  /** Holes of one face, all in one line, in their order along it. */
  private static Stream<DowelWood> between(Part part, List<Hole> holes) {
    return IntStream.range(1, holes.size())
        .mapToObj(
            i ->
                new DowelWood(
                    "one dowel to the next",
                    part,
                    holes.get(i).along().minus(holes.get(i - 1).along()),
                    holes.get(i).diameter().times(3)));
  }
}
