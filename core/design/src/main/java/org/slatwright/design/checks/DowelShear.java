package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * Whether dowels bear the end of the rail that bears most: V ≤ n·min(F_v, f_c90·D·L), with F_v of
 * {@link org.slatwright.design.mechanics.Dowel#safeShear} and the design strength of the rail
 * across its grain over 1.5. Above that it is a warning, above 1.5 times that an error. What the
 * glue on the end of the rail bears is left out. Whether a rail splits along the grain from its
 * dowel is not reckoned; {@link DowelEdges} keeps wood around it.
 */
final class DowelShear implements Rule {

  static final String SUBJECT = "joints of rails R";

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    RailCase rail = RailCase.of(rack);
    Reckoned force = reckon(rail, JointCase.of(rack));
    Figures figures = new Figures(rack.lengths());
    return Stream.of(
        force.finding(
            "dowel-shear",
            SUBJECT,
            "force on the dowels of the rail end that bears most, with %s on a shelf"
                .formatted(figures.mass(rack.load())),
            figures.force(),
            () -> advice(rail),
            "shear of beech: Wood Handbook, table 5-3, over 4; bearing: EN 338, EN 1995-1-1"));
  }

  private static Reckoned reckon(RailCase rail, JointCase joint) {
    double most = joint.safeForce();
    return new Reckoned(rail.endForce(), most, most * Strength.LOAD_FACTOR);
  }

  private static String advice(RailCase rail) {
    JointCase joint = JointCase.of(rail.rack());
    JointRemedies remedies = new JointRemedies(joint);
    return Remedies.anyOf(
        List.of(
            remedies.thickerDowel(other -> reckon(rail, other).holds()),
            remedies.twoDowels(other -> reckon(rail, other).holds()),
            new Remedies(rail.rack()).load(load -> reckon(rail.withLoad(load), joint).holds())));
  }
}
