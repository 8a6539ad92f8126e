package org.slatwright.design.checks;

import org.slatwright.api.plan.Finding.Severity;

/**
 * A number that a rule reckoned.
 *
 * @param value what it is
 * @param most what it may be: above, it is a warning
 * @param failing what it must not be: above, it is an error
 */
record Reckoned(double value, double most, double failing) {

  boolean holds() {
    return value <= most;
  }

  /** Whether it uses up more of what it may be than another. */
  boolean isWorseThan(Reckoned other) {
    return value / most > other.value / other.most;
  }

  Severity severity() {
    if (holds()) {
      return Severity.NOTE;
    }
    return value <= failing ? Severity.WARNING : Severity.ERROR;
  }
}
