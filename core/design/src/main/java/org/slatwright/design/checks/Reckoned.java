package org.slatwright.design.checks;

import java.util.function.DoubleFunction;
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
   * @param spelt how such a number is written, with its unit
   * @param advice asked for only where it does not hold
   */
  Finding finding(
      String rule,
      String subject,
      String message,
      DoubleFunction<String> spelt,
      Supplier<String> advice,
      String source) {
    return new Finding(
        severity(),
        rule,
        subject,
        message,
        spelt.apply(value),
        "at most " + spelt.apply(most),
        holds() ? "" : advice.get(),
        source);
  }
}
