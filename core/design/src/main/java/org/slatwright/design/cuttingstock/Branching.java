package org.slatwright.design.cuttingstock;

import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * What to branch on: how many of a stock are cut, then how many patterns hold two certain pieces
 * together, then how often one pattern is cut.
 */
final class Branching {

  private static final double NEARLY = 1e-6;

  private final ColumnGeneration generation;
  private final LinearProgram program;
  private final Job job;
  private final Narrowing narrowing;
  private final Pairs pairs;

  Branching(ColumnGeneration generation, Narrowing narrowing, Work work) {
    this.generation = generation;
    this.program = generation.program;
    this.job = generation.job;
    this.narrowing = narrowing;
    this.pairs = new Pairs(generation, work);
  }

  /**
   * What narrows the program to each half, the half to search first first; nothing when all values
   * are whole numbers.
   *
   * @param x the program's values
   */
  List<Runnable> halves(double[] x) {
    int stock = mostOpen(x, job.stocks(), k -> program.own(generation.stockRow(k)));
    if (stock >= 0) {
      var up = above(stock, x[stock]);
      var down = below(stock, x[stock]);
      return x[stock] - Math.floor(x[stock]) > 0.5 ? List.of(up, down) : List.of(down, up);
    }
    var pair = pairs.choose(x);
    if (pair.isPresent()) {
      return halves(pair.get());
    }
    int pattern = mostOpen(x, generation.patterns.size(), generation::variable);
    return pattern < 0
        ? List.of()
        : List.of(above(pattern, x[pattern]), below(pattern, x[pattern]));
  }

  private Runnable above(int variable, double x) {
    double high = program.high(variable);
    return () -> narrowing.limit(variable, Math.floor(x) + 1, high);
  }

  private Runnable below(int variable, double x) {
    double low = program.low(variable);
    return () -> narrowing.limit(variable, low, Math.floor(x));
  }

  private List<Runnable> halves(Pairs.Pair pair) {
    return List.of(
        () -> narrowing.limitTogether(pair.holding(), pair.floor() + 1, Double.POSITIVE_INFINITY),
        () -> narrowing.limitTogether(pair.holding(), Double.NEGATIVE_INFINITY, pair.floor()));
  }

  /** Of so many variables the one furthest from a whole number; -1 when all are whole. */
  private static int mostOpen(double[] x, int size, IntUnaryOperator variable) {
    int chosen = -1;
    double most = NEARLY;
    for (int n = 0; n < size; n++) {
      int v = variable.applyAsInt(n);
      double open = open(x[v]);
      if (open > most) {
        most = open;
        chosen = v;
      }
    }
    return chosen;
  }

  private static double open(double x) {
    double part = x - Math.floor(x);
    return Math.min(part, 1 - part);
  }
}
