package org.slatwright.benchmarks.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;
import org.slatwright.design.cuttingstock.CuttingSolution;

/**
 * What came of one instance.
 *
 * @param ours our plan of it
 * @param firstFit the cost of first fit decreasing; empty when it finds no plan
 * @param reference what the reference solver made of it, where it was asked
 */
record Measured(Attempt ours, OptionalLong firstFit, Optional<Attempt> reference) {

  private static final String OURS = "%-28s %10s %10s %7s %10s %8s %6s %10s";
  private static final String REFERENCE = " | %10s %7s %10s %6s";

  static String header(boolean withReference) {
    String ours =
        OURS.formatted("name", "cost", "bound", "proved", "ms", "over %", "plan", "first fit");
    return withReference ? ours + REFERENCE.formatted("reference", "proved", "ms", "plan") : ours;
  }

  /** By how much a cost is above the optimum, else above our bound; in percent. */
  double percentOver(long cost) {
    return cost == least() ? 0 : 100.0 * (cost - least()) / Math.max(1, least());
  }

  /** The same, in stock lengths: the cheapest that cost anything. */
  double lengthsOver(long cost) {
    long price =
        instance().problem().stocks().stream()
            .mapToLong(Stock::price)
            .filter(each -> each > 0)
            .min()
            .orElse(1);
    return (double) (cost - least()) / price;
  }

  private long least() {
    return instance().optimum().orElse(plan().lowerBound());
  }

  Instance instance() {
    return ours.instance();
  }

  /** Our plan: there always is one. */
  CuttingSolution plan() {
    return ours.solution().orElseThrow();
  }

  String line() {
    return OURS.formatted(
            instance().name(),
            plan().cost(),
            plan().lowerBound(),
            yes(ours.isProved()),
            oneDecimal(ours.millis()),
            String.format(Locale.ROOT, "%.2f", percentOver(plan().cost())),
            right(ours),
            firstFit.isPresent() ? firstFit.getAsLong() : "none")
        + reference.map(Measured::besides).orElse("")
        + remarks();
  }

  private static String besides(Attempt reference) {
    return REFERENCE.formatted(
        reference.solution().map(plan -> Long.toString(plan.cost())).orElse("none"),
        yes(reference.isProved()),
        oneDecimal(reference.millis()),
        reference.solution().isPresent() ? right(reference) : "-");
  }

  private String remarks() {
    List<String> remarks = new ArrayList<>();
    if (ours.missing() > 0) {
      remarks.add(ours.missing() + " pieces find no stock");
    }
    ours.faults().forEach(fault -> remarks.add("wrong: " + fault));
    reference.ifPresent(r -> r.faults().forEach(fault -> remarks.add("reference: " + fault)));
    return remarks.isEmpty() ? "" : "  " + String.join("; ", remarks);
  }

  private static String right(Attempt attempt) {
    return attempt.faults().isEmpty() ? "right" : "WRONG";
  }

  private static String yes(boolean is) {
    return is ? "yes" : "no";
  }

  private static String oneDecimal(double millis) {
    return String.format(Locale.ROOT, "%.1f", millis);
  }
}
