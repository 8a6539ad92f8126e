package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * Whether the slats bear one heavy thing: all that may stand in a bay, in the middle of the span,
 * on two slats. Bending stress W·L/4 over b·h²/6 against {@link Strength}.
 *
 * <p>The case is our own proposal, no source: goods are never spread evenly for long, and a tub or
 * a sack is short for its bay but seldom stands on one slat alone.
 */
final class SlatPointLoad implements Rule {

  private static final String NAME = "slat-point-load";

  @Override
  public Stream<Finding> check(Design design) {
    SlatCase slat = SlatCase.of(design.rack());
    Reckoned stress = slat.strengthUnderOneThing();
    Figures figures = new Figures(design.rack().lengths());
    return Stream.of(
        stress.finding(
            NAME,
            SlatAdvice.SUBJECT,
            "bending stress in a slat with %s as one thing in mid-span, on no more than two slats"
                .formatted(figures.mass(slat.bayMass())),
            figures.stress(),
            () -> SlatAdvice.ofSpan(slat, SlatCase::strengthUnderOneThing),
            Strength.SOURCE + "; the case is our own"));
  }
}
