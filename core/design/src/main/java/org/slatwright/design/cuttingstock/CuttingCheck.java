package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a plan is what it says, reckoned anew from the problem alone: whoever made the plan need
 * not be believed. That no cheaper one exists is not looked at.
 */
public final class CuttingCheck {

  private final CuttingProblem problem;
  private final CuttingSolution solution;
  private final long[] cut;
  private final long[] used;
  private long cost;
  private final List<String> faults = new ArrayList<>();

  private CuttingCheck(CuttingProblem problem, CuttingSolution solution) {
    this.problem = problem;
    this.solution = solution;
    this.cut = new long[problem.demands().size()];
    this.used = new long[problem.stocks().size()];
  }

  /**
   * What is wrong with a plan; nothing when each piece is cut or missing once, no stock length is
   * over-filled, no more is cut than there is, no piece is missing that a stock length not cut
   * would hold, the cost adds up and the bound is not above it.
   */
  public static List<String> faults(CuttingProblem problem, CuttingSolution solution) {
    var check = new CuttingCheck(problem, solution);
    for (int p = 0; p < solution.patterns().size(); p++) {
      check.pattern(p);
    }
    for (int i = 0; i < check.cut.length; i++) {
      check.pieces(i);
    }
    for (int k = 0; k < check.used.length; k++) {
      check.stock(k);
    }
    check.cost();
    return List.copyOf(check.faults);
  }

  private void pattern(int p) {
    var pattern = solution.patterns().get(p);
    var stock = problem.stocks().get(pattern.stock());
    long pieces = 0;
    long length = 0;
    for (int i = 0; i < cut.length; i++) {
      long n = pattern.pieces().get(i);
      cut[i] += n * pattern.times();
      pieces += n;
      length += n * problem.demands().get(i).length();
      expect(n >= 0, "pattern " + p + " holds " + n + " pieces of demand " + i);
    }
    used[pattern.stock()] += pattern.times();
    cost += stock.price() * pattern.times();
    expect(pattern.times() > 0, "pattern " + p + " is cut " + pattern.times() + " times");
    expect(pieces > 0, "pattern " + p + " is empty");
    expect(problem.fits(stock, pieces, length), "pattern " + p + " is over-filled");
  }

  private void pieces(int i) {
    int wanted = problem.demands().get(i).count();
    int missing = solution.missing().get(i);
    expect(
        missing >= 0 && cut[i] + missing == wanted,
        "demand " + i + ": " + cut[i] + " cut and " + missing + " missing of " + wanted);
  }

  private void stock(int k) {
    var stock = problem.stocks().get(k);
    long left = stock.available().orElse(Integer.MAX_VALUE) - used[k];
    expect(left >= 0, "stock " + k + ": " + used[k] + " cut, " + -left + " more than there are");
    for (int i = 0; i < cut.length; i++) {
      boolean held = left > 0 && problem.fits(stock, 1, problem.demands().get(i).length());
      expect(
          !held || solution.missing().get(i) <= 0,
          "demand " + i + " is missing, stock " + k + " would hold it");
    }
  }

  private void cost() {
    expect(cost == solution.cost(), "the cost is " + cost + ", not " + solution.cost());
    expect(
        solution.lowerBound() <= cost, "the bound " + solution.lowerBound() + " is above " + cost);
  }

  private void expect(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }
}
