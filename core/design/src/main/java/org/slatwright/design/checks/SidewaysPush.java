package org.slatwright.design.checks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.mechanics.Fastening;
import org.slatwright.design.mechanics.OpeningJoint;
import org.slatwright.design.sizing.Rack;

/**
 * Whether the rack leans over sideways, along its slats: nothing braces it that way but the fixing
 * of the slats. Where a frame leans, each slat turns on an edge of each rail and its brads or
 * screws are drawn out ({@link OpeningJoint}). By virtual work a push H at the top, at height h, is
 * held by {@code H·h = ΣM} over all bearings.
 *
 * <p>A sixth of what draws them out is used, on the side to which the rack leans more easily,
 * against {@link PushCase#PUSH}; a rack that is anchored at the top of each frame is held there,
 * and told as a note. What the dowels let a rail turn, and what a leaning load pushes along, is
 * left out; both are on the wrong side, one more reason for a brace.
 */
final class SidewaysPush implements Rule {

  private static final String NAME = "sideways-push";
  private static final String BRACE =
      "fix a diagonal brace or a back panel across two frames at the back, or anchor the top of each"
          + " frame to the wall";

  /**
   * A slat on a rail.
   *
   * @param pull on all of its fixings together, N
   * @param left as it opens about the left edge of where both touch
   * @param right the same about the right one
   */
  private record Bearing(double pull, OpeningJoint left, OpeningJoint right) {}

  private record Bearings(List<Bearing> all, double height) {

    /** The push that they hold with so many times the pull, N. */
    double push(double times) {
      double toLeft = all.stream().mapToDouble(b -> b.left().moment(b.pull() * times)).sum();
      double toRight = all.stream().mapToDouble(b -> b.right().moment(b.pull() * times)).sum();
      return Math.min(toLeft, toRight) / height;
    }
  }

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    Figures figures = new Figures(rack.units());
    Bearings bearings = bearings(design);
    double held = bearings.push(1);
    boolean holds = held >= PushCase.PUSH || rack.anchored();
    Measure.Compared compared = figures.force().compare(held, PushCase.PUSH);
    return Stream.of(
        new Finding(
            holds ? Severity.NOTE : Severity.WARNING,
            NAME,
            "rack",
            rack.anchored()
                ? "push along the slats at the top that their fixing alone would hold, were it not"
                    + " anchored"
                : "push along the slats at the top that their fixing holds, with no brace",
            compared.value(),
            compared.atLeast(),
            holds ? "" : advice(new FixingCase(rack), bearings),
            PushCase.SOURCE + "; " + FixingCase.SOURCE));
  }

  private static String advice(FixingCase fixing, Bearings bearings) {
    List<Optional<String>> changes =
        List.of(morePerEnd(fixing, bearings), screws(fixing, bearings));
    String others = Remedies.anyOf(changes);
    return others.isEmpty() ? BRACE : BRACE + ", or " + others;
  }

  /** An even number: half of them then stand on either side of the dowel. */
  private static Optional<String> morePerEnd(FixingCase fixing, Bearings bearings) {
    int perEnd = fixing.rack().fixing().perEnd();
    return IntStream.rangeClosed(perEnd + 1, FixingCase.MOST_PER_END)
        .filter(count -> count % 2 == 0)
        .filter(count -> bearings.push((double) count / perEnd) >= PushCase.PUSH)
        .mapToObj(count -> "joint.fixing.per-end=" + count)
        .findFirst();
  }

  /** Where they take the places of brads at the same mean levers. */
  private static Optional<String> screws(FixingCase fixing, Bearings bearings) {
    Rack rack = fixing.rack();
    boolean sameLevers = rack.slats().lengths().size() == 1 && rack.fixing().perEnd() % 2 == 0;
    Length thick = rack.units().metricOrInch(Length.mm(4), Length.inches(5, 32));
    double times = fixing.withdrawal(Fastener.Kind.SCREW, thick) / fixing.withdrawal();
    return rack.fixing().kind() == Fastener.Kind.BRAD
            && sameLevers
            && bearings.push(times) >= PushCase.PUSH
        ? Optional.of(
            "joint.fixing.kind=screw and "
                + new Remedies(rack).fixing(rack.fixing().length(), thick))
        : Optional.empty();
  }

  private static Bearings bearings(Design design) {
    Rack rack = design.rack();
    double pull = new FixingCase(rack).withdrawal() / Fastening.SAFETY;
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
        pull * fasteners.size(), opening(rack, middle - left), opening(rack, right - middle));
  }

  private static OpeningJoint opening(Rack rack, double reach) {
    double pressed =
        Math.min(
            Strength.pressedAtAPush(rack.timber(), rack.climate()),
            Strength.pressedAtAPush(rack.slatTimber(), rack.climate()));
    return new OpeningJoint(Math.max(0, reach), rack.slats().width().inMm(), pressed);
  }
}
