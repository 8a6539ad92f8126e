package org.slatwright.design.checks;

import java.util.Comparator;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Piece;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.wood.Species;

/**
 * Whether brads and screws split slat or rail. Below 15 diameters from the middle of the shank to
 * the end of a piece, or 5 to its edge, they are driven into a pilot hole (EN 1995-1-1, table 8.2,
 * from memory) of 0.75 of the shank in softwood, 0.9 in hardwood (common practice, from memory); a
 * screw has one always. In a pilot hole 3 and 1 1/2 are enough for what slats bear: common
 * practice, no source; the 7 and 3 of that table are for joints of structures.
 */
final class FixingSplitting implements Rule {

  private static final String NAME = "fixing-splitting";
  private static final String SOURCE =
      "common practice, no source; EN 1995-1-1, table 8.2 (from memory)";
  private static final double SOFT_PILOT = 0.75;
  private static final double HARD_PILOT = 0.9;

  /**
   * From the middle of a shank to the nearest end or edge of a piece.
   *
   * @param mm how far
   * @param diameter of the shank, mm
   */
  private record Distance(boolean toEnd, String piece, double mm, double diameter) {

    /** In a pilot hole, mm. */
    double least() {
      return (toEnd ? 3 : 1.5) * diameter;
    }

    /** Without one, mm. */
    double undrilled() {
      return (toEnd ? 15 : 5) * diameter;
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
  public Stream<Finding> check(Design design) {
    return design.assembly().fasteners().stream()
        .flatMap(FixingSplitting::distances)
        .min(Comparator.comparingDouble(Distance::share))
        .map(nearest -> finding(design, nearest))
        .stream();
  }

  private static Finding finding(Design design, Distance nearest) {
    Rack rack = design.rack();
    Figures figures = new Figures(rack.units());
    boolean screws = rack.fixing().kind() == Fastener.Kind.SCREW;
    boolean pilot = screws || anyAsksForPilot(design);
    String drill =
        "drill pilot holes of %s through the slats".formatted(figures.distance(pilot(rack)));
    return new Finding(
        nearest.isTooNear() ? Severity.WARNING : Severity.NOTE,
        NAME,
        Inside.plural(rack.fixing().kind()),
        nearest.words() + ", so that the wood does not split",
        figures.distance(nearest.mm()),
        "at least "
            + figures.distance(pilot ? nearest.least() : nearest.undrilled())
            + (pilot ? " in a pilot hole" : ""),
        nearest.isTooNear()
            ? thinner(rack, nearest, figures) + "; else " + drill
            : pilot ? drill : "",
        SOURCE);
  }

  private static boolean anyAsksForPilot(Design design) {
    return design.assembly().fasteners().stream()
        .flatMap(FixingSplitting::distances)
        .anyMatch(Distance::asksForPilot);
  }

  /**
   * A thinner one is put nearer to the middle of the rail, at least a quarter of the rail from the
   * end of a slat that reaches half over it.
   */
  private static String thinner(Rack rack, Distance nearest, Figures figures) {
    Length step = rack.units().metricOrInch(Length.roundedMm(0.1), Length.inches(1, 64));
    double room = Math.min(nearest.mm(), rack.rail().width().inMm() / 4);
    double most = nearest.toEnd() ? room / 3 : nearest.mm() / 1.5;
    Length thin = Length.roundedMm(most).snappedDown(step);
    return thin.isPositive() ? "no thicker than " + figures.length(thin) : "wider stock";
  }

  private static double pilot(Rack rack) {
    boolean hard =
        rack.timber().species().kind() == Species.Kind.HARDWOOD
            || rack.slatTimber().species().kind() == Species.Kind.HARDWOOD;
    return rack.fixing().diameter().inMm() * (hard ? HARD_PILOT : SOFT_PILOT);
  }

  private static Stream<Distance> distances(Fastener fastener) {
    return Stream.of(fastener.through(), fastener.into())
        .flatMap(piece -> distances(fastener, piece));
  }

  private static Stream<Distance> distances(Fastener fastener, Piece piece) {
    Axis grain = piece.placement().length().axis();
    return Stream.of(Axis.values())
        .filter(axis -> axis != fastener.inward().axis())
        .map(
            axis ->
                new Distance(
                    axis == grain,
                    piece.part().name(),
                    nearest(fastener, piece.box(), axis),
                    fastener.diameter().inMm()));
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
