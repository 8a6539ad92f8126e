package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * How far the tips of slats that reach out beyond the frames sag after years under the load of
 * {@link OverhangStrength}, the bay behind them empty, so that the slat turns over the rail. A
 * cantilever may sag by twice the share of its length that a span may (EN 1995-1-1, table 7.2, from
 * memory): 1/100, as a span 1/200. Never an error, since nothing breaks. Nothing where slats do not
 * reach out.
 */
final class OverhangSag implements Rule {

  private static final String NAME = "slat-overhang-sag";
  private static final double REACH_PER_SAG = 100;

  @Override
  public Stream<Finding> check(Design design) {
    SlatCase slat = SlatCase.of(design.rack());
    return slat.overhang().isZero() ? Stream.empty() : Stream.of(finding(slat));
  }

  private static Finding finding(SlatCase slat) {
    Reckoned sag = reckon(slat);
    Figures figures = new Figures(slat.rack().lengths());
    return sag.finding(
        NAME,
        SlatAdvice.OVERHANG,
        "sag after years with %s as one thing on no more than two of them"
            .formatted(figures.mass(slat.bayMass())),
        figures.distance(),
        () -> SlatAdvice.ofOverhang(slat, OverhangSag::reckon),
        "EN 1995-1-1, 2.2.3 and table 7.2; the case is our own");
  }

  private static Reckoned reckon(SlatCase slat) {
    double most = slat.reach() / REACH_PER_SAG;
    return new Reckoned(slat.tipSag(), most, Double.POSITIVE_INFINITY);
  }
}
