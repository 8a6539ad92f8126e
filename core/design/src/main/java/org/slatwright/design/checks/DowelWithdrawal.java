package org.slatwright.design.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * Whether dowels hold against being drawn out when the rack is pushed as {@link PushCase} has it:
 * the pull that the moment of a joint takes ({@link org.slatwright.design.mechanics.OpeningJoint}),
 * against {@link org.slatwright.design.mechanics.Dowel#safeWithdrawal}; twice that is an error.
 */
final class DowelWithdrawal implements Rule {

  private static final double FAILING = 2;

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    JointCase joint = JointCase.of(rack);
    Reckoned pull = reckon(joint);
    Figures figures = new Figures(rack.lengths());
    return Stream.of(
        pull.finding(
            "dowel-withdrawal",
            DowelShear.SUBJECT,
            "pull on a dowel when the rack is pushed from the front or back at the top with "
                + figures.force(PushCase.PUSH),
            figures.force(),
            () -> advice(joint),
            "Eckelman (1969, from memory) over 4; " + PushCase.SOURCE));
  }

  private static Reckoned reckon(JointCase joint) {
    double most = joint.safePull();
    return new Reckoned(new PushCase(joint).pull(), most, FAILING * most);
  }

  private static String advice(JointCase joint) {
    JointRemedies remedies = new JointRemedies(joint);
    List<Optional<String>> changes = new ArrayList<>();
    changes.add(remedies.deeper(other -> reckon(other).holds()));
    changes.addAll(remedies.all(other -> reckon(other).holds()));
    return Remedies.anyOf(changes);
  }
}
