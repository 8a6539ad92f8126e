package org.slatwright.design.checks;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/**
 * Whether brads and screws are deep enough in the rail to hold fully against a push across them: 14
 * diameters in light wood to 10 in heavy (Wood Handbook, chapter 8, lateral resistance of nails).
 */
final class FixingPenetration implements FixingLimit {

  private static final String NAME = "fixing-penetration";
  private static final String OTHERWISE =
      "take thinner slats or higher rails: none that is sold is deep enough and ends in the rail";

  @Override
  public Stream<Finding> check(Design design, UnaryOperator<String> others) {
    FixingCase fixing = new FixingCase(design.rack());
    Figures figures = new Figures(design.rack().lengths());
    boolean holds = fixing.isDeepEnough();
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
            holds ? "" : others.apply(OTHERWISE),
            FixingCase.SOURCE));
  }
}
