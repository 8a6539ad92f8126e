package org.slatwright.design.checks;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/** A rule that other brads or screws may clear. */
interface FixingLimit extends Rule {

  /**
   * What it finds.
   *
   * @param others settings of other brads or screws, or what it is given where there are none;
   *     asked for only where it does not hold
   */
  Stream<Finding> check(Design design, UnaryOperator<String> others);

  @Override
  default Stream<Finding> check(Design design) {
    return check(design, otherwise -> new BetterFixing(design).clearing(this, otherwise));
  }

  /** Whether something else than brads or screws holds it better. */
  default boolean isHeldOtherwise() {
    return false;
  }

  /** Whether there is nothing to change. */
  default boolean holds(Design design) {
    return check(design, otherwise -> otherwise)
        .allMatch(finding -> finding.severity() == Severity.NOTE);
  }
}
