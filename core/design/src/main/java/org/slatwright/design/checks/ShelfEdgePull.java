package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.InchPound;
import org.slatwright.design.mechanics.Tipping;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/**
 * The pull straight down on slats that reach out sideways beyond the feet that tips the rack: F = W
 * · x / e. In front, slats end behind the feet, and no pull down tips it. What stands on a shelf
 * holds the rack down, so it is reckoned empty.
 *
 * <p>At least the weight of 60 lb (27.2 kg), the child of ASTM F2057-23, hanging on the very end:
 * 267 N. Silent where nothing reaches out.
 */
record ShelfEdgePull() implements Rule {

  private static final double LEAST = 60 * InchPound.N_PER_LBF;

  @Override
  public Stream<Finding> check(Design design) {
    Stance stance = Stance.of(design);
    Length reach = Way.SIDEWAYS.reach(stance, design);
    return reach.isPositive() ? Stream.of(finding(design.rack(), stance, reach)) : Stream.empty();
  }

  private static Finding finding(Rack rack, Stance stance, Length reach) {
    Figures figures = new Figures(rack.lengths());
    double lever = Way.SIDEWAYS.lever(stance, stance.empty());
    double pull = Tipping.pull(stance.empty().weight(), lever, reach.inMm());
    boolean holds = pull >= LEAST;
    Measure.Compared compared = figures.force().compare(pull, LEAST);
    return new Finding(
        holds ? Finding.Severity.NOTE : Finding.Severity.WARNING,
        "shelf-edge-pull",
        "slats.overhang",
        "the pull down on the ends of the slats that tips it sideways, empty",
        compared.value(),
        compared.atLeast(),
        holds ? "" : advice(rack, stance, reach),
        "statics; the child of ASTM F2057-23");
  }

  private static String advice(Rack rack, Stance stance, Length reach) {
    double tooMuch =
        Tipping.shortening(
            LEAST,
            reach.inMm(),
            stance.empty().kg(),
            Way.SIDEWAYS.lever(stance, stance.empty()) - rack.increment().inMm(),
            2 * Way.SIDEWAYS.kgPerMm(rack));
    Length most = reach.minus(Length.roundedMm(tooMuch)).snappedDown(rack.increment());
    String overhang = new Spelling(rack.units()).length(Length.max(Length.ZERO, most));
    return StandFree.orAnchor(List.of("slats.overhang=" + overhang));
  }
}
