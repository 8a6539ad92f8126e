package org.slatwright.design.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;

/**
 * Whether brads and screws are deep enough in the rail to hold fully against a push across them: 14
 * diameters in light wood to 10 in heavy (Wood Handbook, chapter 8, lateral resistance of nails).
 */
final class FixingPenetration implements Rule {

  private static final String NAME = "fixing-penetration";

  @Override
  public Stream<Finding> check(Design design) {
    FixingCase fixing = new FixingCase(design.rack());
    Figures figures = new Figures(design.rack().units());
    boolean holds = fixing.depth().inMm() >= fixing.leastDepth() - Rod.ROUNDING;
    Measure.Compared compared =
        figures.measured().compare(fixing.depth().inMm(), fixing.leastDepth());
    return Stream.of(
        new Finding(
            holds ? Severity.NOTE : Severity.WARNING,
            NAME,
            fixing.plural(),
            "how deep they are in the rail, to hold fully against a push across them",
            compared.value(),
            compared.atLeast(),
            holds ? "" : deeper(fixing),
            FixingCase.SOURCE));
  }

  private static String deeper(FixingCase fixing) {
    return Remedies.anyOf(List.of(longer(fixing), thinner(fixing)));
  }

  private static Optional<String> longer(FixingCase fixing) {
    Rack rack = fixing.rack();
    Length least = Length.roundedMm(fixing.leastDepth()).plus(new Length(1));
    Length length = rack.slats().thickness().plus(least).snappedUp(rack.increment());
    return length.isMoreThan(longest(rack))
        ? Optional.empty()
        : Optional.of(new Remedies(rack).fixing(length, rack.fixing().diameter()));
  }

  private static Optional<String> thinner(FixingCase fixing) {
    Rack rack = fixing.rack();
    double diameters = fixing.leastDepth() / rack.fixing().diameter().inMm();
    Length step = rack.units().metricOrInch(Length.roundedMm(0.1), Length.inches(1, 64));
    Length most = Length.roundedMm(fixing.depth().inMm() / diameters).snappedDown(step);
    return most.isLessThan(Length.mm(1))
        ? Optional.empty()
        : Optional.of(new Remedies(rack).fixing(rack.fixing().length(), most));
  }

  private static Length longest(Rack rack) {
    return rack.slats().thickness().plus(rack.rail().height()).minus(Length.roundedMm(Rod.WALL));
  }
}
