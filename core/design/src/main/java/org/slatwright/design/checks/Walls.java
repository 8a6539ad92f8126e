package org.slatwright.design.checks;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/**
 * The wood that is left beside things of one kind.
 *
 * @param least of all, mm; below zero where one runs into the other, or out
 * @param thin how many are too thin
 */
record Walls(double least, long thin) {

  static final String SOURCE = "geometry of the model; the limit is our own choice";

  static Walls of(DoubleStream woods) {
    double[] all = woods.toArray();
    return new Walls(
        Arrays.stream(all).min().orElse(Double.POSITIVE_INFINITY),
        Arrays.stream(all).filter(Walls::isThin).count());
  }

  private static boolean isThin(double wood) {
    return wood < Rod.WALL - Rod.ROUNDING;
  }

  /** Whether nothing is left at all. */
  boolean isBroken() {
    return least < -Rod.ROUNDING;
  }

  /**
   * An error where there is none, a warning where there is little.
   *
   * @param broken what is said where none is left
   * @param thinned what is said where little is left
   * @param advice asked for only then, since it may be long in the finding
   */
  Optional<Finding> finding(
      String rule,
      String subject,
      String broken,
      String thinned,
      Supplier<String> advice,
      Figures figures) {
    if (thin == 0) {
      return Optional.empty();
    }
    Measure.Compared compared = figures.measured().compare(Math.max(0, least), Rod.WALL);
    return Optional.of(
        new Finding(
            isBroken() ? Severity.ERROR : Severity.WARNING,
            rule,
            subject,
            (isBroken() ? broken : thinned) + (thin == 1 ? "" : ", in " + thin + " places"),
            compared.value(),
            compared.atLeast(),
            advice.get(),
            SOURCE));
  }
}
