package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * Whether slat ends that reach out beyond the frames bear one heavy thing on two of them: all that
 * may stand in a bay (our own proposal, as in {@link SlatPointLoad}), with its weight in the middle
 * of the overhang. Bending stress W·a/2 over b·h²/6 at the outer face of the rail against {@link
 * Strength}. Nothing where slats do not reach out.
 */
final class OverhangStrength implements Rule {

  private static final String NAME = "slat-overhang-strength";

  @Override
  public Stream<Finding> check(Design design) {
    SlatCase slat = SlatCase.of(design.rack());
    return slat.overhang().isZero() ? Stream.empty() : Stream.of(finding(slat));
  }

  private static Finding finding(SlatCase slat) {
    Reckoned stress = slat.strengthOfTheEnd();
    Figures figures = new Figures(slat.rack().lengths());
    return stress.finding(
        NAME,
        SlatAdvice.OVERHANG,
        "bending stress over the outer rail with %s as one thing on no more than two slat ends"
            .formatted(figures.mass(slat.bayMass())),
        figures.stress(),
        () -> SlatAdvice.ofOverhang(slat, SlatCase::strengthOfTheEnd),
        Strength.SOURCE + "; the case is our own");
  }
}
