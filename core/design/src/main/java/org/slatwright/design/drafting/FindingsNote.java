package org.slatwright.design.drafting;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/** Sends whoever has the first sheet alone in hand to what must change before building. */
final class FindingsNote {

  private FindingsNote() {}

  /**
   * A sentence, where there is anything to change.
   *
   * @param sheet the number of the sheet that tells it
   */
  static Optional<String> of(List<Finding> findings, int sheet) {
    if (has(findings, Severity.ERROR)) {
      return Optional.of("ERRORS were found: see sheet " + sheet + " before building.");
    }
    return has(findings, Severity.WARNING)
        ? Optional.of("Warnings: see sheet " + sheet + ".")
        : Optional.empty();
  }

  private static boolean has(List<Finding> findings, Severity severity) {
    return findings.stream().anyMatch(finding -> finding.severity() == severity);
  }
}
