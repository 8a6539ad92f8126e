package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * How far the rail that bears most sags after years under what a shelf must carry, spread evenly,
 * against {@link Sag}.
 */
final class RailSag implements Rule {

  private static final String NAME = "rail-sag";

  @Override
  public Stream<Finding> check(Design design) {
    RailCase rail = RailCase.of(design.rack());
    Reckoned sag = reckon(rail);
    Figures figures = new Figures(design.rack().lengths());
    return Stream.of(
        sag.finding(
            NAME,
            RailStrength.SUBJECT,
            "sag of the rail that bears most, after years with %s spread evenly on a shelf"
                .formatted(figures.mass(rail.load())),
            figures.distance(),
            () -> advice(rail),
            Sag.SOURCE));
  }

  private static Reckoned reckon(RailCase rail) {
    return Sag.over(rail.span(), rail.sag());
  }

  private static String advice(RailCase rail) {
    Remedies remedies = new Remedies(rail.rack());
    return Remedies.anyOf(
        List.of(
            remedies.railHeight(height -> reckon(rail.withHeight(height)).holds()),
            remedies.load(load -> reckon(rail.withLoad(load)).holds())));
  }
}
