package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * How far the rail that bears most sags after years under what a shelf must carry, spread evenly,
 * against 0.5 % of its length (BS EN 14073-3, from a second hand); twice that is an error.
 */
final class RailSag implements Rule {

  private static final String NAME = "rail-sag";
  private static final double SPAN_PER_SAG = 200;

  @Override
  public Stream<Finding> check(Design design) {
    RailCase rail = RailCase.of(design.rack());
    Reckoned sag = reckon(rail);
    Figures figures = new Figures(design.rack().units());
    return Stream.of(
        sag.finding(
            NAME,
            RailStrength.SUBJECT,
            "sag of the rail that bears most, after years with %s spread evenly on a shelf"
                .formatted(figures.mass(rail.load())),
            figures::distance,
            () -> advice(rail),
            "BS EN 14073-3: 1/200 of the span; EN 1995-1-1, 2.2.3"));
  }

  private static Reckoned reckon(RailCase rail) {
    double most = rail.span() / SPAN_PER_SAG;
    return new Reckoned(rail.sag(), most, 2 * most);
  }

  private static String advice(RailCase rail) {
    Remedies remedies = new Remedies(rail.rack());
    return Remedies.anyOf(
        List.of(
            remedies.railHeight(height -> reckon(rail.withHeight(height)).holds()),
            remedies.load(load -> reckon(rail.withLoad(load)).holds())));
  }
}
