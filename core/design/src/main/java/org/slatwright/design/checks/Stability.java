package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * Whether the rack stands free, and the advice to anchor it, which is always given. Of a rack that
 * is anchored the limits are told all the same, as notes: they say what the anchors are there for.
 */
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
    List<String> unsteady =
        found.stream()
            .filter(finding -> finding.severity() != Finding.Severity.NOTE)
            .map(Finding::rule)
            .toList();
    Stream<Finding> told =
        design.rack().anchored() ? found.stream().map(Stability::free) : found.stream();
    return Stream.concat(Stream.of(Anchor.finding(design, unsteady)), told);
  }

  /** As it would be were the rack to stand free. */
  private static Finding free(Finding finding) {
    return new Finding(
        Finding.Severity.NOTE,
        finding.rule(),
        finding.subject(),
        finding.message() + ", were it not anchored",
        finding.value(),
        finding.limit(),
        "",
        finding.source());
  }
}
