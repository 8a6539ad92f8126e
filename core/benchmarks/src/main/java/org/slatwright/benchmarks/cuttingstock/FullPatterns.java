package org.slatwright.benchmarks.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;

/** Every way to cut a stock length that leaves no room for another piece that is wanted. */
final class FullPatterns {

  private final CuttingProblem problem;
  private final Stock stock;
  private final int most;
  private final int[] pieces;
  private final List<int[]> found = new ArrayList<>();

  private FullPatterns(CuttingProblem problem, Stock stock, int most) {
    this.problem = problem;
    this.stock = stock;
    this.most = most;
    this.pieces = new int[problem.demands().size()];
  }

  /** How many of each demand a pattern holds; empty when there are more than {@code most}. */
  static Optional<List<int[]>> of(CuttingProblem problem, Stock stock, int most) {
    FullPatterns patterns = new FullPatterns(problem, stock, most);
    patterns.settle(0, 0, 0);
    return patterns.found.size() > most ? Optional.empty() : Optional.of(patterns.found);
  }

  /** Every number of the pieces of a demand, those before it being settled. */
  private void settle(int next, long count, long length) {
    if (next == pieces.length) {
      if (count > 0 && isFull(count, length)) {
        found.add(pieces.clone());
      }
      return;
    }
    Demand demand = problem.demands().get(next);
    for (int n = 0; n <= demand.count() && found.size() <= most; n++) {
      if (!problem.fits(stock, count + n, length + n * demand.length())) {
        break;
      }
      pieces[next] = n;
      settle(next + 1, count + n, length + n * demand.length());
    }
    pieces[next] = 0;
  }

  private boolean isFull(long count, long length) {
    for (int i = 0; i < pieces.length; i++) {
      Demand demand = problem.demands().get(i);
      if (pieces[i] < demand.count() && problem.fits(stock, count + 1, length + demand.length())) {
        return false;
      }
    }
    return true;
  }
}
