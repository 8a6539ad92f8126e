package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * Whether the joints keep the frames square under a push from the front or the back at the top, as
 * {@link PushCase} has it. Less than they should take is a warning, less than half an error. The
 * glue on the ends of rails, and what slats do, are left out.
 */
final class FramePush implements Rule {

  private static final double FAILING = 2;

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    JointCase joint = JointCase.of(rack);
    Reckoned push = reckon(joint);
    Figures figures = new Figures(rack.lengths());
    Measure.Compared compared = figures.force().compare(new PushCase(joint).taken(), PushCase.PUSH);
    return Stream.of(
        new Finding(
            push.severity(),
            "frame-push",
            DowelShear.SUBJECT,
            "push from the front or back at the top that the joints of all frames take",
            compared.value(),
            compared.atLeast(),
            push.holds() ? "" : advice(joint),
            PushCase.SOURCE));
  }

  /** The push against what the joints take. */
  private static Reckoned reckon(JointCase joint) {
    double taken = new PushCase(joint).taken();
    return new Reckoned(PushCase.PUSH, taken, FAILING * taken);
  }

  private static String advice(JointCase joint) {
    return Remedies.anyOf(
        Stream.concat(
                new JointRemedies(joint).all(other -> reckon(other).holds()).stream(),
                Stream.of(
                    new Remedies(joint.rack())
                        .railHeight(height -> reckon(joint.withHeight(height)).holds())))
            .toList());
  }
}
