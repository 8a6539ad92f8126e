package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/** Whether the rack stands free, and the advice to anchor it, which is always given. */
record Stability() implements Rule {

  private static final List<Rule> LIMITS =
      List.of(
          new TipOver("tip-forward", Way.FORWARD),
          new TipOver("tip-sideways", Way.SIDEWAYS),
          new ShelfEdgePull(),
          new Slope(),
          new Slenderness());

  @Override
  public Stream<Finding> check(Design design) {
    List<Finding> found = LIMITS.stream().flatMap(rule -> rule.check(design)).toList();
    boolean steady =
        found.stream().allMatch(finding -> finding.severity() == Finding.Severity.NOTE);
    return Stream.concat(Stream.of(Anchor.finding(design, steady)), found.stream());
  }
}
