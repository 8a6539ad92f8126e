package org.slatwright.design.checks;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * Whether the point of a brad or screw comes out of the rail below, or its shank out of the side of
 * rail or slat, found by geometry. That a brad follows the grain is not modelled.
 */
final class FastenerComesOut implements FixingLimit {

  private static final String NAME = "fastener-comes-out";

  @Override
  public Stream<Finding> check(Design design, UnaryOperator<String> others) {
    return Stream.of(points(design, others), sides(design)).flatMap(Optional::stream);
  }

  private static Optional<Finding> points(Design design, UnaryOperator<String> others) {
    String fasteners = Inside.plural(design.rack().fixing().kind());
    List<Fastener> all = design.assembly().fasteners();
    return Walls.of(all.stream().mapToDouble(FastenerComesOut::belowPoint))
        .finding(
            NAME,
            "points of " + fasteners,
            "points come out of the rail: wood below them",
            "little wood below the points",
            () -> others.apply("take thinner slats or higher rails"),
            new Figures(design.rack().lengths()));
  }

  private static double belowPoint(Fastener fastener) {
    return Rod.of(fastener).woodTo(fastener.into().box(), fastener.inward());
  }

  private static Optional<Finding> sides(Design design) {
    String fasteners = Inside.plural(design.rack().fixing().kind());
    Rack rack = design.rack();
    Figures figures = new Figures(rack.lengths());
    Length wide =
        rack.joint().diameter().plus(rack.fixing().diameter().times(4)).plus(Length.mm(2));
    return Walls.of(design.assembly().fasteners().stream().flatMapToDouble(FastenerComesOut::sides))
        .finding(
            NAME,
            fasteners,
            fasteners + " come out of the side of rail or slat: wood beside them",
            "little wood between " + fasteners + " and the side of rail or slat",
            () ->
                "rails at least %s wide, slats at least %s wide, or thinner %s and dowels"
                    .formatted(
                        figures.length(wide.snappedUp(rack.increment())),
                        figures.length(wideSlat(rack)),
                        fasteners),
            figures);
  }

  private static Length wideSlat(Rack rack) {
    return rack.fixing()
        .diameter()
        .plus(Length.mm(2))
        .times(rack.fixing().perEnd())
        .snappedUp(rack.increment());
  }

  private static DoubleStream sides(Fastener fastener) {
    Rod rod = Rod.of(fastener);
    return Stream.of(fastener.through().box(), fastener.into().box())
        .flatMapToDouble(box -> sides(rod, box));
  }

  private static DoubleStream sides(Rod rod, Box box) {
    return Stream.of(Direction.values())
        .filter(face -> face.axis() != rod.axis())
        .mapToDouble(face -> rod.woodTo(box, face));
  }
}
