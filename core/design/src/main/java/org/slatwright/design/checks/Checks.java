package org.slatwright.design.checks;

import java.util.List;
import org.slatwright.api.plan.Finding;

/** Every rule, and what they find. */
public final class Checks {

  /** In the order that findings of one severity are told in: one line a rule. */
  private static final List<Rule> RULES =
      List.of(
          // strength of slats and rails
          new SlatStrength(),
          new SlatPointLoad(),
          new SlatSag(),
          new OverhangStrength(),
          new OverhangSag(),
          new RailStrength(),
          new RailSag(),

          // dowel joints
          new DowelDiameter(),
          new DowelEmbedment(),
          new DowelEdges(),
          new DowelShear(),
          new RailTwist(),
          new FramePush(),
          new DowelWithdrawal(),

          // fixing, and what meets inside the wood
          new FixingPenetration(),
          new FixingWithdrawal(),
          new FixingSplitting(),
          new SidewaysPush(),
          new FastenerMeetsDowel(),
          new FastenersMeet(),
          new FastenerComesOut(),
          new HoleBreaksOut(),
          new DowelsMeet(),

          // stability
          new Stability(),

          // movement of the wood
          new SlatGaps(),
          new DowelPairMovement(),
          new Dampness(),

          // tools and timber
          new BitReach(),
          JigClearance.RULE,
          new JigAccuracy(),
          new ClampOpening(),
          new FingerGaps(),

          // cautions
          new Cautions());

  private Checks() {}

  /** What all rules find, in their order. */
  public static List<Finding> of(Design design) {
    return RULES.stream().flatMap(rule -> rule.check(design)).toList();
  }
}
