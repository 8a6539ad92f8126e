package org.slatwright.design.cuttingstock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What holds of every solution. */
final class CuttingAssertions {

  private CuttingAssertions() {}

  /** No piece lost or doubled, nothing over-filled, no limit passed, the cost as it is. */
  static void assertHonest(CuttingProblem problem, CuttingSolution solution) {
    int[] cut = new int[problem.demands().size()];
    int[] used = new int[problem.stocks().size()];
    long cost = 0;
    for (var pattern : solution.patterns()) {
      var stock = problem.stocks().get(pattern.stock());
      long pieces = 0;
      long length = 0;
      for (int i = 0; i < cut.length; i++) {
        int n = pattern.pieces().get(i);
        cut[i] += n * pattern.times();
        pieces += n;
        length += n * problem.demands().get(i).length();
      }
      assertTrue(pieces > 0 && pattern.times() > 0, "an empty pattern");
      assertTrue(problem.fits(stock, pieces, length), () -> pattern + " is over-filled");
      used[pattern.stock()] += pattern.times();
      cost += stock.price() * pattern.times();
    }
    for (int i = 0; i < cut.length; i++) {
      assertEquals(problem.demands().get(i).count(), cut[i] + solution.missing().get(i));
    }
    for (int k = 0; k < used.length; k++) {
      assertTrue(used[k] <= problem.stocks().get(k).available().orElse(Integer.MAX_VALUE));
    }
    assertEquals(cost, solution.cost());
    assertTrue(solution.lowerBound() <= cost);
  }
}
