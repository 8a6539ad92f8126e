package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * How far the slats sag after years under what a shelf must carry, spread evenly: {@code 5/384 ·
 * W·L³/(E·I) + 1/8 · W·L/(G·A′)} (Wood Handbook, eq. 9-2), grown by creep, against {@link Sag}.
 *
 * <p>A sag of more than 1/600 of the span can be seen (shop rule, from memory); a note then says
 * what would keep it from sight.
 */
final class SlatSag implements Rule {

  private static final String NAME = "slat-sag";
  private static final double SPAN_PER_VISIBLE_SAG = 600;

  @Override
  public Stream<Finding> check(Design design) {
    SlatCase slat = SlatCase.of(design.rack());
    Reckoned sag = reckon(slat);
    Figures figures = new Figures(design.rack().lengths());
    Measure.Compared compared = figures.distance().compare(sag.value(), sag.most());
    return Stream.of(
        new Finding(
            sag.severity(),
            NAME,
            SlatAdvice.SUBJECT,
            "sag after years with %s spread evenly on a shelf".formatted(figures.mass(slat.load())),
            compared.value(),
            compared.atMost(),
            sag.holds() ? outOfSight(slat, figures) : SlatAdvice.ofSpan(slat, SlatSag::reckon),
            Sag.SOURCE));
  }

  private static Reckoned reckon(SlatCase slat) {
    return Sag.over(slat.span(), slat.sag());
  }

  private static String outOfSight(SlatCase slat, Figures figures) {
    double visible = slat.span() / SPAN_PER_VISIBLE_SAG;
    Remedies remedies = new Remedies(slat.rack());
    return slat.sag() <= visible
        ? ""
        : remedies
            .slatThickness(size -> !isVisible(slat.withThickness(size)))
            .flatMap(
                size ->
                    remedies
                        .slatSection(size)
                        .map(setting -> "set " + setting)
                        .or(() -> remedies.thickerBoards(size)))
            .map(
                change ->
                    "it holds, but the eye sees more than %s: for less, %s"
                        .formatted(figures.distance(visible), change))
            .orElse("");
  }

  private static boolean isVisible(SlatCase slat) {
    return slat.sag() > slat.span() / SPAN_PER_VISIBLE_SAG;
  }
}
