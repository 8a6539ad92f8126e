package org.slatwright.design.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Fastener.Kind;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.SoldFixing;
import org.slatwright.design.sizing.Spelling;

/**
 * Brads or screws that are sold and hold better, each tried on the whole rack with every rule on
 * them, so that no two rules ask for what does not go together: first those by which all rules
 * hold; where there are none, those that clear the one rule and break no other.
 */
record BetterFixing(Design design) {

  private static final List<FixingLimit> LIMITS =
      List.of(
          new FixingPenetration(),
          new FixingWithdrawal(),
          new FixingSplitting(),
          new SidewaysPush(),
          new FastenerMeetsDowel(),
          new FastenersMeet(),
          new FastenerComesOut());

  /** Settings, each alone enough; something else where there are none. */
  String clearing(FixingLimit rule, String otherwise) {
    List<Optional<String>> all = offers(by(limits(rule, limit -> !limit.isHeldOtherwise())));
    List<Optional<String>> others = all.isEmpty() ? offers(by(limits(rule, limit -> false))) : all;
    return others.isEmpty() ? otherwise : Remedies.anyOf(others);
  }

  /** That rule, all that hold now, and more. */
  private List<FixingLimit> limits(FixingLimit rule, Predicate<FixingLimit> more) {
    return LIMITS.stream()
        .filter(
            limit ->
                limit.getClass().equals(rule.getClass()) || more.test(limit) || limit.holds(design))
        .toList();
  }

  private static Predicate<Design> by(List<FixingLimit> limits) {
    return tried -> limits.stream().allMatch(limit -> limit.holds(tried));
  }

  /** Of the same kind, and screws in place of brads; brads only where no screw will do. */
  private List<Optional<String>> offers(Predicate<Design> holds) {
    Optional<String> screws = offer(Kind.SCREW, holds);
    Optional<String> brads =
        design.rack().fixing().kind() == Kind.BRAD || screws.isEmpty()
            ? offer(Kind.BRAD, holds)
            : Optional.empty();
    return Stream.of(brads, screws).filter(Optional::isPresent).toList();
  }

  private Optional<String> offer(Kind kind, Predicate<Design> holds) {
    return candidates(kind)
        .filter(fixing -> !fixing.equals(design.rack().fixing()))
        .filter(fixing -> holds.test(with(fixing)))
        .map(this::settings)
        .findFirst();
  }

  private Design with(Rack.Fixing fixing) {
    Rack rack = design.rack().withFixing(fixing);
    return new Design(rack, Framing.frame(rack), design.quantities(), design.jig());
  }

  /** As few as there are or more, and as thick as they are or nearly so. */
  private Stream<Rack.Fixing> candidates(Kind kind) {
    Rack.Fixing now = design.rack().fixing();
    List<SoldFixing> sold =
        SoldFixing.of(kind, design.rack().units()).stream()
            .sorted(Comparator.comparing(each -> off(each, kind)))
            .toList();
    return IntStream.rangeClosed(now.perEnd(), FixingCase.MOST_PER_END)
        .boxed()
        .flatMap(count -> sold.stream().flatMap(each -> candidates(kind, each, count)));
  }

  private Length off(SoldFixing sold, Kind kind) {
    Rack rack = design.rack();
    Length best =
        kind == rack.fixing().kind()
            ? rack.fixing().diameter()
            : SoldFixing.usual(kind, rack.units());
    return Length.max(sold.diameter(), best).minus(Length.min(sold.diameter(), best));
  }

  private Stream<Rack.Fixing> candidates(Kind kind, SoldFixing sold, int count) {
    return lengths(kind, sold)
        .map(length -> new Rack.Fixing(kind, length, sold.diameter(), count))
        .filter(fixing -> new FixingCase(design.rack().withFixing(fixing)).isDeepEnough());
  }

  /** As long as they are, if such are sold, and else 2 1/2 times the slat or just deep enough. */
  private Stream<Length> lengths(Kind kind, SoldFixing sold) {
    Rack rack = design.rack();
    Length step = SoldFixing.step(rack.units());
    Length thick = rack.slats().thickness();
    Length most =
        Length.min(sold.longest(), thick.plus(rack.rail().height()).minus(step).snappedDown(step));
    Rack.Fixing tried = new Rack.Fixing(kind, thick, sold.diameter(), 1);
    Length deep =
        Length.roundedMm(new FixingCase(rack.withFixing(tried)).leastDepth())
            .plus(thick)
            .snappedUp(step);
    Length now = Length.max(deep, rack.fixing().length().snappedDown(step));
    return Stream.of(now, Length.max(deep, thick.times(5).half().snappedUp(step)), deep)
        .map(length -> Length.min(length, most))
        .distinct();
  }

  private String settings(Rack.Fixing fixing) {
    Rack.Fixing now = design.rack().fixing();
    Spelling spelling = new Spelling(design.rack().units());
    String kind = fixing.kind() == now.kind() ? "" : "joint.fixing.kind=" + fixing.kind().word();
    boolean sameSize =
        kind.isEmpty()
            && fixing.length().equals(now.length())
            && fixing.diameter().equals(now.diameter());
    String size =
        sameSize
            ? ""
            : "joint.fixing.length=%s and joint.fixing.diameter=%s"
                .formatted(spelling.length(fixing.length()), spelling.length(fixing.diameter()));
    String count = fixing.perEnd() == now.perEnd() ? "" : "joint.fixing.per-end=" + fixing.perEnd();
    return String.join(
        " and ", Stream.of(kind, size, count).filter(each -> !each.isEmpty()).toList());
  }
}
