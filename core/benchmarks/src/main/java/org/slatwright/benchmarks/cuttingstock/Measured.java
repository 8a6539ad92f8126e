package org.slatwright.benchmarks.cuttingstock;

import java.util.Locale;
import java.util.OptionalLong;
import org.slatwright.design.cuttingstock.CuttingSolution;

/**
 * What came of one instance.
 *
 * @param instance what was solved
 * @param solution its plan
 * @param millis how long that took
 * @param firstFit the cost of first fit decreasing; empty when it finds no plan
 */
record Measured(Instance instance, CuttingSolution solution, double millis, OptionalLong firstFit) {

  static final String HEADER =
      String.format(
          Locale.ROOT,
          "%-28s %10s %10s %7s %10s %8s %10s",
          "name",
          "cost",
          "bound",
          "proved",
          "ms",
          "over %",
          "first fit");

  boolean isAtOptimum() {
    return instance.optimum().isPresent() && solution.cost() == instance.optimum().getAsLong();
  }

  /** By how much the cost is above the optimum, else above the bound; in percent. */
  double over(long cost) {
    long least = instance.optimum().orElse(solution.lowerBound());
    return cost == least ? 0 : 100.0 * (cost - least) / Math.max(1, least);
  }

  String line() {
    return String.format(
        Locale.ROOT,
        "%-28s %10d %10d %7s %10.1f %8.2f %10s%s",
        instance.name(),
        solution.cost(),
        solution.lowerBound(),
        solution.isProved() ? "yes" : "no",
        millis,
        over(solution.cost()),
        firstFit.isPresent() ? firstFit.getAsLong() : "none",
        missing());
  }

  private String missing() {
    int pieces = solution.missing().stream().mapToInt(Integer::intValue).sum();
    return pieces == 0 ? "" : "  " + pieces + " pieces find no stock";
  }
}
