package org.slatwright.design.checks;

import java.util.function.Supplier;
import org.slatwright.api.plan.Finding;
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

  /**
   * What is told of it, whether it holds or not.
   *
   * @param measure how such a number is told
   * @param advice asked for only where it does not hold
   */
  Finding finding(
      String rule,
      String subject,
      String message,
      Measure measure,
      Supplier<String> advice,
      String source) {
    Measure.Compared compared = measure.compare(value, most);
    return new Finding(
        severity(),
        rule,
        subject,
        message,
        compared.value(),
        compared.atMost(),
        holds() ? "" : advice.get(),
        source);
  }
}
