package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * Whether the rails bear what a shelf must carry, spread evenly: in the rail that bears most, the
 * greatest bending stress over b·h²/6, or the shear stress 3/2·V/(b·h) at its ends where that uses
 * up more, as in short high rails; against {@link Strength}.
 *
 * <p>The pressure of slats on rails is not checked: at the loads that slats bear it is a hundredth
 * of what EN 338 gives across the grain. The ends of rails are a matter of the dowel joint.
 */
final class RailStrength implements Rule {

  static final String SUBJECT = "rails";
  private static final String NAME = "rail-strength";

  @Override
  public Stream<Finding> check(Design design) {
    RailCase rail = RailCase.of(design.rack());
    boolean shears = rail.shear().isWorseThan(rail.bending());
    Reckoned stress = shears ? rail.shear() : rail.bending();
    Figures figures = new Figures(design.rack().lengths());
    return Stream.of(
        stress.finding(
            NAME,
            SUBJECT,
            "%s stress in the rail that bears most, with %s spread evenly on a shelf"
                .formatted(shears ? "shear" : "bending", figures.mass(rail.load())),
            figures.stress(),
            () -> advice(rail),
            Strength.SOURCE));
  }

  private static String advice(RailCase rail) {
    Remedies remedies = new Remedies(rail.rack());
    return Remedies.anyOf(
        List.of(
            remedies.railHeight(height -> holds(rail.withHeight(height))),
            remedies.load(load -> holds(rail.withLoad(load)))));
  }

  private static boolean holds(RailCase rail) {
    return rail.bending().holds() && rail.shear().holds();
  }
}
