package org.slatwright.design.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/**
 * Whether the drilling jig, set on the upper edge of every rail in turn, has room there: clear of
 * the other rails of the glued frame, within the upright's ends, and, with the frame lying on a
 * bench, clear of the bench together with the chuck of the drill. Every plate is taken as the box
 * that it fills.
 */
record JigClearance(Rack rack, Jig jig, Figures figures) {

  /** Half of the keyed chuck of a hand drill that takes 13 mm (1/2 in). */
  static final Length CHUCK_RADIUS = Length.roundedMm(22.5);

  private static final String SOURCE =
      "found from the plates in place; chuck of %s: common practice, no source";

  static final Rule RULE =
      design ->
          design.jig().stream()
              .map(jig -> new JigClearance(design.rack(), jig, figures(design)))
              .flatMap(JigClearance::findings);

  private static Figures figures(Design design) {
    return new Figures(design.rack().lengths());
  }

  private Stream<Finding> findings() {
    return Stream.of(
            betweenRails(),
            beyondEnd("floor", "rack.foot", rack.foot(), beyondFloorEnd()),
            beyondEnd("top", "rack.top", rack.topAbove(), beyondTopEnd()),
            overBench())
        .flatMap(Optional::stream);
  }

  private Optional<Finding> betweenRails() {
    List<Integer> tight =
        IntStream.range(0, rack.openings().size()).filter(this::meets).boxed().toList();
    Length thickness = rack.slats().thickness();
    return tight.stream()
        .map(rack.openings()::get)
        .reduce(Length::min)
        .map(
            least ->
                finding(
                    Finding.Severity.WARNING,
                    "jig between two rails",
                    "the register of the jig does not go in between a rail and the next one above",
                    figures.length(least.plus(thickness)) + " of room",
                    "at least " + figures.length(roomTaken()),
                    "openings of at least "
                        + figures.length(roomTaken().minus(thickness).snappedUp(rack.increment()))
                        + ", or thinner sheet for the jig"));
  }

  /** Whether the jig on the rail below that opening runs into any other rail. */
  private boolean meets(int shelf) {
    List<Length> undersides = rack.railUndersides();
    Length edge = undersides.get(shelf).plus(rack.rail().height());
    return undersides.stream()
        .filter(underside -> !underside.equals(undersides.get(shelf)))
        .map(underside -> railAt(underside.minus(edge)))
        .anyMatch(rail -> boxes().anyMatch(rail::overlaps));
  }

  /** A rail in jig axes. */
  private Box railAt(Length underside) {
    Length depth = rack.upright().depth();
    Length side = rack.rail().width().half();
    return new Box(
        new Point3(side.negated(), depth, underside),
        new Point3(side, depth.plus(rack.rail().length()), underside.plus(rack.rail().height())));
  }

  /** How far what lies over the rail stands up from its edge. */
  private Length roomTaken() {
    Box above = railAt(Length.ZERO);
    return boxes()
        .filter(above::overlaps)
        .map(box -> box.high().z())
        .reduce(Length.ZERO, Length::max);
  }

  private Length beyondFloorEnd() {
    Length edge = rack.foot().plus(rack.rail().height());
    return lowest(Axis.Z).plus(edge).negated();
  }

  private Length beyondTopEnd() {
    Length toEnd = rack.slats().thickness().plus(rack.topAbove());
    return highest(Axis.Z).minus(toEnd);
  }

  private Optional<Finding> beyondEnd(String end, String key, Length now, Length beyond) {
    return beyond.isPositive()
        ? Optional.of(
            finding(
                Finding.Severity.NOTE,
                "jig at the " + end + " end",
                "the jig stands out beyond the "
                    + end
                    + " end of the upright; lay that end over the edge of the bench",
                figures.length(beyond),
                "",
                "or set "
                    + key
                    + "="
                    + new Spelling(rack.units())
                        .length(now.plus(beyond).snappedUp(rack.increment()))))
        : Optional.empty();
  }

  /** The register goes in with its head up, so the shorter side is the one below. */
  private Optional<Finding> overBench() {
    Length below = Length.min(lowest(Axis.X).negated(), highest(Axis.X));
    Length above =
        Length.max(below, CHUCK_RADIUS)
            .minus(rack.upright().width().half())
            .snappedUp(rack.increment());
    return above.isPositive()
        ? Optional.of(
            finding(
                Finding.Severity.NOTE,
                "jig over the bench",
                "lay the frame on blocks for drilling, so that jig and chuck pass over the bench",
                "",
                "at least " + figures.length(above),
                ""))
        : Optional.empty();
  }

  private Finding finding(
      Finding.Severity severity,
      String subject,
      String message,
      String value,
      String limit,
      String advice) {
    return new Finding(severity, "jig-clearance", subject, message, value, limit, advice, source());
  }

  private String source() {
    return SOURCE.formatted(figures.measured().told(CHUCK_RADIUS.times(2).inMm()));
  }

  private Stream<Box> boxes() {
    return jig.placed().stream().map(Jig.Placed::box);
  }

  private Length lowest(Axis axis) {
    return boxes().map(box -> box.low().along(axis)).reduce(Length::min).orElseThrow();
  }

  private Length highest(Axis axis) {
    return boxes().map(box -> box.high().along(axis)).reduce(Length::max).orElseThrow();
  }
}
