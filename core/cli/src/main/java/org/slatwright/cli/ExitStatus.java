package org.slatwright.cli;

import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;

/** What the status that a command ends with means. */
enum ExitStatus {
  DONE(0),
  RACK_WRONG(1),
  USAGE_WRONG(2),
  NOT_WRITTEN(3);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }

  /** Whether a plan is sound: wrong when one of its findings is an error. */
  static ExitStatus of(Plan plan) {
    boolean wrong =
        plan.findings().stream().anyMatch(finding -> finding.severity() == Finding.Severity.ERROR);
    return wrong ? RACK_WRONG : DONE;
  }
}
