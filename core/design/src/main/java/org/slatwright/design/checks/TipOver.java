package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.model.Axis;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.PointMass;
import org.slatwright.design.mechanics.Tipping;
import org.slatwright.design.sizing.Rack;

/**
 * The level push at the top that tips the rack: F = W · x / h. What stands on a shelf stands within
 * the feet and holds the rack down, so the empty rack is the worst of all ways to load it.
 *
 * <p>At least 20 lbf (89 N), which ANSI/BIFMA X5.9 applies to the top of office storage: from a
 * secondary source, which does not give how it is loaded meanwhile; EN 16122, 11.2, tests storage
 * furniture unloaded. Holds for a rack on a level, hard floor that does not slide.
 */
record TipOver(String rule, Way way) implements Rule {

  @Override
  public Stream<Finding> check(Design design) {
    Stance stance = Stance.of(design);
    PointMass empty = stance.empty();
    Figures figures = new Figures(design.rack().lengths());
    double height = design.assembly().extent().size(Axis.Z).inMm();
    double push = Tipping.push(empty.weight(), way.lever(stance, empty), height);
    boolean holds = push >= PushCase.PUSH;
    Measure.Compared compared = figures.force().compare(push, PushCase.PUSH);
    return Stream.of(
        new Finding(
            holds ? Finding.Severity.NOTE : Finding.Severity.WARNING,
            rule,
            "rack",
            "the push at the top that tips it " + way.words() + ", empty",
            compared.value(),
            compared.atLeast(),
            holds ? "" : advice(design.rack(), stance, PushCase.PUSH * height),
            "statics; " + PushCase.SOURCE));
  }

  private String advice(Rack rack, Stance stance, double moment) {
    double lever = way.lever(stance, stance.empty()) - rack.increment().inMm();
    double missing = Tipping.lengthening(moment, stance.empty().kg(), lever, way.kgPerMm(rack));
    return StandFree.orAnchor(way.atLeast(rack, missing).stream().toList());
  }
}
