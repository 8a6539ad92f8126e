package org.slatwright.design.checks;

import java.util.ArrayList;
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
import org.slatwright.design.sizing.Rack;

/**
 * Whether the rack leans over sideways, along its slats: nothing braces it that way but the fixing
 * of the slats. Where a frame leans, each slat turns on an edge of each rail and its brads or
 * screws are drawn out, on the lever y from that edge, while the edge is crushed over a = ΣF /
 * (f_c,90·b): {@code M = ΣF·(y - a/2)}. By virtual work a push H at the top, at height h, is held
 * by {@code H·h = ΣM} over all bearings.
 *
 * <p>A sixth of what draws them out is used, on the side to which the rack leans more easily,
 * against 89 N at the top (BIFMA X5.9, from a second hand); a rack that is anchored at the top of
 * each frame is held there, and told as a note. What the dowels let a rail turn, and what a leaning
 * load pushes along, is left out; both are on the wrong side, one more reason for a brace.
 */
final class SidewaysPush implements Rule {

  private static final String NAME = "sideways-push";
  private static final double PUSH = 89;
  private static final String BRACE =
      "fix a diagonal brace or a back panel across two frames at the back, or anchor the top of each"
          + " frame to the wall";

  /**
   * A slat on a rail.
   *
   * @param pull on all of its fixings together, N
   * @param left their mean lever from the left edge of where both touch, mm
   * @param right the same from the right
   */
  private record Bearing(double pull, double left, double right) {

    /** With so many times the pull, N·mm; the edge bears {@code line} N per mm of its breadth. */
    double moment(double lever, double times, double line) {
      double crushed = Math.min(pull * times / line, lever);
      return line * crushed * (lever - crushed / 2);
    }
  }

  private record Bearings(List<Bearing> all, double line, double height) {

    /** The push that they hold with so many times the pull, N. */
    double push(double times) {
      double toLeft = all.stream().mapToDouble(b -> b.moment(b.left(), times, line)).sum();
      double toRight = all.stream().mapToDouble(b -> b.moment(b.right(), times, line)).sum();
      return Math.min(toLeft, toRight) / height;
    }
  }

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    Figures figures = new Figures(rack.units());
    Bearings bearings = bearings(design);
    double held = bearings.push(1);
    boolean holds = held >= PUSH || rack.anchored();
    return Stream.of(
        new Finding(
            holds ? Severity.NOTE : Severity.WARNING,
            NAME,
            "rack",
            rack.anchored()
                ? "push along the slats at the top that their fixing alone would hold, were it not"
                    + " anchored"
                : "push along the slats at the top that their fixing holds, with no brace",
            figures.force(held),
            "at least " + figures.force(PUSH),
            holds ? "" : advice(new FixingCase(rack), bearings),
            "BIFMA X5.9 (from a second hand); " + FixingCase.SOURCE));
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
    return IntStream.rangeClosed(perEnd + 1, fixing.mostPerEnd())
        .filter(count -> count % 2 == 0)
        .filter(count -> bearings.push((double) count / perEnd) >= PUSH)
        .mapToObj(count -> "joint.fixing.per-end=" + count)
        .findFirst();
  }

  /** Where they take the places of brads at the same mean levers. */
  private static Optional<String> screws(FixingCase fixing, Bearings bearings) {
    Rack rack = fixing.rack();
    boolean sameLevers = rack.slats().lengths().size() == 1 && rack.fixing().perEnd() % 2 == 0;
    Length thick = rack.units().metricOrInch(Length.mm(4), Length.inches(5, 32));
    double times = fixing.withdrawal(Fastener.Kind.SCREW, thick) / fixing.withdrawal();
    return rack.fixing().kind() == Fastener.Kind.BRAD && sameLevers && bearings.push(times) >= PUSH
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
    List<Bearing> all = new ArrayList<>();
    atBearings.values().forEach(fasteners -> all.add(bearing(fasteners, pull)));
    double line = rack.timber().crushing(rack.climate()) * rack.slats().width().inMm();
    return new Bearings(all, line, design.assembly().extent().high().z().inMm());
  }

  private static Bearing bearing(List<Fastener> fasteners, double pull) {
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
        pull * fasteners.size(), Math.max(0, middle - left), Math.max(0, right - middle));
  }
}
