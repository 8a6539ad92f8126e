package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * Whether the slats bear what a shelf must carry, spread evenly over slats and bays: bending stress
 * W·L/8 over b·h²/6 of each slat against {@link Strength}.
 */
final class SlatStrength implements Rule {

  private static final String NAME = "slat-strength";

  @Override
  public Stream<Finding> check(Design design) {
    SlatCase slat = SlatCase.of(design.rack());
    Reckoned stress = slat.strength();
    Figures figures = new Figures(design.rack().lengths());
    return Stream.of(
        stress.finding(
            NAME,
            SlatAdvice.SUBJECT,
            "bending stress in each slat with %s spread evenly on a shelf"
                .formatted(figures.mass(slat.load())),
            figures.stress(),
            () -> SlatAdvice.ofSpan(slat, SlatCase::strength),
            Strength.SOURCE));
  }
}
