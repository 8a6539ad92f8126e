package org.slatwright.design.checks;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.mechanics.OpeningJoint;
import org.slatwright.design.sizing.Rack;

/**
 * Whether the rack leans over sideways, along its slats: nothing braces it that way but the fixing
 * of the slats. Where a frame leans, each slat turns on an edge of each rail and its brads or
 * screws are drawn out ({@link OpeningJoint}). By virtual work a push H at the top, at height h, is
 * held by {@code H·h = ΣM} over all bearings.
 *
 * <p>Of what draws them out for a moment the safe share is used, on the side to which the rack
 * leans more easily, against {@link PushCase#PUSH}; a rack that is anchored at the top of each
 * frame is held there, and one that is braced by its brace: both are told as a note. What the
 * dowels let a rail turn, and what a leaning load pushes along, is left out; both are on the wrong
 * side, one more reason for a brace.
 */
final class SidewaysPush implements FixingLimit {

  private static final String NAME = "sideways-push";
  private static final String BRACE =
      "fix a diagonal brace or a back panel across two frames at the back and set rack.brace=back,"
          + " or anchor the top of each frame to the wall and set rack.stands=anchored";

  /**
   * A slat on a rail.
   *
   * @param pull on all of its fixings together, N
   * @param left as it opens about the left edge of where both touch
   * @param right the same about the right one
   */
  private record Bearing(double pull, OpeningJoint left, OpeningJoint right) {}

  private record Bearings(List<Bearing> all, double height) {

    /** The push that they hold, N. */
    double push() {
      double toLeft = all.stream().mapToDouble(b -> b.left().moment(b.pull())).sum();
      double toRight = all.stream().mapToDouble(b -> b.right().moment(b.pull())).sum();
      return Math.min(toLeft, toRight) / height;
    }
  }

  @Override
  public Stream<Finding> check(Design design, UnaryOperator<String> others) {
    Rack rack = design.rack();
    Figures figures = new Figures(rack.lengths());
    double held = bearings(design).push();
    boolean holds = held >= PushCase.PUSH || rack.anchored() || rack.braced();
    Measure.Compared compared = figures.force().compare(held, PushCase.PUSH);
    return Stream.of(
        new Finding(
            holds ? Severity.NOTE : Severity.WARNING,
            NAME,
            "rack",
            "push along the slats at the top that their fixing " + words(rack),
            compared.value(),
            compared.atLeast(),
            holds ? "" : advice(others.apply("")),
            PushCase.SOURCE + "; " + FixingCase.SOURCE));
  }

  /** A brace or an anchor does. */
  @Override
  public boolean isHeldOtherwise() {
    return true;
  }

  private static String words(Rack rack) {
    if (rack.braced()) {
      return "alone would hold, were it not braced at the back; the brace is yours to add, and is"
          + " not drawn";
    }
    return rack.anchored() ? "alone would hold, were it not anchored" : "holds, with no brace";
  }

  private static String advice(String others) {
    return others.isEmpty() ? BRACE : BRACE + ", or " + others;
  }

  private static Bearings bearings(Design design) {
    Rack rack = design.rack();
    double pull = new FixingCase(rack).safeShortPull();
    Map<String, List<Fastener>> atBearings =
        design.assembly().fasteners().stream()
            .collect(
                Collectors.groupingBy(
                    fastener -> fastener.through().id() + " " + fastener.into().id(),
                    TreeMap::new,
                    Collectors.toList()));
    List<Bearing> all =
        atBearings.values().stream().map(fasteners -> bearing(rack, fasteners, pull)).toList();
    return new Bearings(all, design.assembly().extent().high().z().inMm());
  }

  private static Bearing bearing(Rack rack, List<Fastener> fasteners, double pull) {
    Box slat = fasteners.get(0).through().box();
    Box rail = fasteners.get(0).into().box();
    double left = Length.max(slat.low().x(), rail.low().x()).inMm();
    double right = Length.min(slat.high().x(), rail.high().x()).inMm();
    double middle =
        fasteners.stream()
            .mapToDouble(fastener -> fastener.head().x().inMm())
            .average()
            .orElseThrow();
    return new Bearing(
        pull * fasteners.size(),
        opening(rack, slat, middle - left),
        opening(rack, slat, right - middle));
  }

  private static OpeningJoint opening(Rack rack, Box slat, double reach) {
    double pressed =
        Math.min(
            Strength.pressedAtAPush(rack.timber(), rack.climate()),
            Strength.pressedAtAPush(rack.slatTimber(), rack.climate()));
    return new OpeningJoint(Math.max(0, reach), slat.size(Axis.Y).inMm(), pressed);
  }
}
