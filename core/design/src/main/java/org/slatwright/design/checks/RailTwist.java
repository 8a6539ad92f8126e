package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * Whether the joints keep rails from turning about their length, where slats press on one edge more
 * than on the other: one dowel resists with its glue and its own strength, two also push against
 * each other. That slats are nailed to the rail is left out, which is on the safe side; so twice
 * what the dowels may bear, half of what breaks them, is a warning, and only more an error.
 */
final class RailTwist implements Rule {

  private static final double FAILING = 2;

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    RailCase rail = RailCase.of(rack);
    Reckoned twist = reckon(rail, JointCase.of(rack));
    Figures figures = new Figures(rack.lengths());
    return Stream.of(
        twist.finding(
            "rail-twist",
            DowelShear.SUBJECT,
            "turning of a rail about its length at its %s, with %s on a shelf"
                .formatted(
                    JointCase.of(rack).count() == 1 ? "single dowel" : "two dowels",
                    figures.mass(rack.load())),
            figures.moment(),
            () -> advice(rail),
            "textbook torsion; shear of beech: Wood Handbook, table 5-3, over 4"));
  }

  private static Reckoned reckon(RailCase rail, JointCase joint) {
    double most = joint.safeTwist();
    return new Reckoned(rail.endTwist(), most, FAILING * most);
  }

  private static String advice(RailCase rail) {
    JointCase joint = JointCase.of(rail.rack());
    JointRemedies remedies = new JointRemedies(joint);
    return Remedies.anyOf(
        List.of(
            remedies.twoDowels(other -> reckon(rail, other).holds()),
            remedies.twoDowelsInAHigherRail(other -> reckon(rail, other).holds()),
            new Remedies(rail.rack()).load(load -> reckon(rail.withLoad(load), joint).holds())));
  }
}
