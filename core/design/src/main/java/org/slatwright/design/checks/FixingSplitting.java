package org.slatwright.design.checks;

import java.util.Comparator;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Piece;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.wood.Species;
import org.slatwright.design.wood.Timber;

/**
 * Whether brads and screws split slat or rail. Nearer than 10 diameters in light wood, 15 in heavy,
 * from the middle of the shank to the end of a piece, or 5 and 7 to its edge, they are driven into
 * a pilot hole (EN 1995-1-1, table 8.2, ends and edges that no load is directed to, from memory).
 * Wood is light up to a characteristic density of 420 kg/m³; above 500 it is always drilled
 * (8.3.1.2). The hole is 0.75 of the shank in softwood, 0.9 in hardwood (common practice, from
 * memory); a screw has one always. In a pilot hole 3 and 1 1/2 are enough for what slats bear:
 * common practice, no source; the 7 and 3 of that table are for joints of structures.
 */
final class FixingSplitting implements FixingLimit {

  private static final String NAME = "fixing-splitting";
  private static final String SOURCE =
      "common practice, no source; EN 1995-1-1, 8.3.1.2 and table 8.2 (from memory)";
  private static final double SOFT_PILOT = 0.75;
  private static final double HARD_PILOT = 0.9;
  private static final double LIGHT = 420;
  private static final double TO_END = 3;
  private static final double TO_EDGE = 1.5;
  private static final double ALWAYS_DRILLED = 500;

  /**
   * From the middle of a shank to the nearest end or edge of a piece.
   *
   * @param mm how far
   * @param diameter of the shank, mm
   * @param density of the piece, characteristic, kg/m³
   */
  private record Distance(boolean toEnd, String piece, double mm, double diameter, double density) {

    /** In a pilot hole, mm. */
    double least() {
      return (toEnd ? TO_END : TO_EDGE) * diameter;
    }

    /** Without one, mm; infinite where there is always one. */
    double undrilled() {
      if (density > ALWAYS_DRILLED) {
        return Double.POSITIVE_INFINITY;
      }
      boolean light = density <= LIGHT;
      return (toEnd ? (light ? 10 : 15) : (light ? 5 : 7)) * diameter;
    }

    double share() {
      return mm / least();
    }

    boolean asksForPilot() {
      return mm < undrilled() - Rod.ROUNDING;
    }

    boolean isTooNear() {
      return mm < least() - Rod.ROUNDING;
    }

    String words() {
      return "middle of the shank to the nearest %s of a %s"
          .formatted(toEnd ? "end" : "edge", piece);
    }
  }

  @Override
  public Stream<Finding> check(Design design, UnaryOperator<String> others) {
    return distances(design)
        .min(Comparator.comparingDouble(Distance::share))
        .map(nearest -> finding(design, nearest, others))
        .stream();
  }

  private static Finding finding(Design design, Distance nearest, UnaryOperator<String> others) {
    Rack rack = design.rack();
    Figures figures = new Figures(rack.lengths());
    boolean screws = rack.fixing().kind() == Fastener.Kind.SCREW;
    boolean pilot = screws || distances(design).anyMatch(Distance::asksForPilot);
    String drill = "drill pilot holes of %s through the slats".formatted(figures.bit(pilot(rack)));
    Measure.Compared compared =
        figures.measured().compare(nearest.mm(), pilot ? nearest.least() : nearest.undrilled());
    return new Finding(
        nearest.isTooNear() ? Severity.WARNING : Severity.NOTE,
        NAME,
        Inside.plural(rack.fixing().kind()),
        nearest.words() + ", so that the wood does not split",
        compared.value(),
        compared.atLeast() + (pilot ? " in a pilot hole" : ""),
        nearest.isTooNear()
            ? others.apply("take wider rails and slats, or thinner dowels")
            : pilot ? drill : "",
        SOURCE);
  }

  private static double pilot(Rack rack) {
    boolean hard =
        rack.timber().species().kind() == Species.Kind.HARDWOOD
            || rack.slatTimber().species().kind() == Species.Kind.HARDWOOD;
    return rack.fixing().diameter().inMm() * (hard ? HARD_PILOT : SOFT_PILOT);
  }

  private static Stream<Distance> distances(Design design) {
    Rack rack = design.rack();
    return design.assembly().fasteners().stream()
        .flatMap(
            fastener ->
                Stream.concat(
                    distances(fastener, fastener.through(), rack.slatTimber()),
                    distances(fastener, fastener.into(), rack.timber())));
  }

  private static Stream<Distance> distances(Fastener fastener, Piece piece, Timber timber) {
    Axis grain = piece.placement().length().axis();
    return Stream.of(Axis.values())
        .filter(axis -> axis != fastener.inward().axis())
        .map(
            axis ->
                new Distance(
                    axis == grain,
                    piece.part().name(),
                    nearest(fastener, piece.box(), axis),
                    fastener.diameter().inMm(),
                    timber.grade().leastDensity()));
  }

  private static double nearest(Fastener fastener, Box box, Axis axis) {
    Rod shank = Rod.of(fastener);
    double wood =
        Stream.of(Direction.values())
            .filter(face -> face.axis() == axis)
            .mapToDouble(face -> shank.woodTo(box, face))
            .min()
            .orElseThrow();
    return wood + fastener.diameter().inMm() / 2;
  }
}
