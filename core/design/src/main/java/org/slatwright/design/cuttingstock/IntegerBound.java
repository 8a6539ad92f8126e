package org.slatwright.design.cuttingstock;

import java.util.Optional;

/**
 * What every plan in a branch costs at least, and what a pattern costs beyond the worth of its
 * pieces and its stock; in whole numbers of {@link ColumnGeneration#scale} to a unit of price,
 * exact (as Neumaier and Shcherbina 2004 do with intervals).
 *
 * <p>With multipliers y of the rows, a plan in which the rows' sums are s and pattern p is cut x
 * times costs Σ y·s + Σ x·(price - worth under y); each s and x is taken at the end of its range at
 * which that is least.
 *
 * @param reduced by the index of the pattern
 */
record IntegerBound(long value, long[] reduced) {

  /** Multipliers that could overflow a sum are given up. */
  private static final long LARGEST = 1L << 58;

  /** The bound that the program's duals, or others, lead to; empty where they are too large. */
  static Optional<IntegerBound> of(
      ColumnGeneration generation, Narrowing narrowing, double[] duals, Work work) {
    long[] y = multipliers(generation, duals);
    var rows = ofRows(generation.program, y);
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    long[] reduced = reduced(generation, narrowing, y);
    work.spend(reduced.length * 12L);
    long value = rows.get();
    for (int p = 0; p < reduced.length; p++) {
      value += least(generation, p, reduced[p]);
      if (value < -LARGEST) {
        return Optional.empty();
      }
    }
    return Optional.of(new IntegerBound(value, reduced));
  }

  /** Nought where the row has no end on the side that the dual asks for. */
  private static long[] multipliers(ColumnGeneration generation, double[] duals) {
    long[] y = new long[duals.length];
    for (int r = 0; r < y.length; r++) {
      y[r] = generation.scaled(duals[r]);
      if (Double.isInfinite(end(generation.program, r, y[r]))) {
        y[r] = 0;
      }
    }
    return y;
  }

  private static double end(LinearProgram program, int row, long multiplier) {
    int own = program.own(row);
    return multiplier < 0 ? program.high(own) : program.low(own);
  }

  private static Optional<Long> ofRows(LinearProgram program, long[] y) {
    long sum = 0;
    for (int r = 0; r < y.length; r++) {
      long end = (long) end(program, r, y[r]);
      if (Math.abs(y[r]) > LARGEST / (1 + end)) {
        return Optional.empty();
      }
      sum += y[r] * end;
      if (Math.abs(sum) > LARGEST * 4) {
        return Optional.empty();
      }
    }
    return Optional.of(sum);
  }

  private static long[] reduced(ColumnGeneration generation, Narrowing narrowing, long[] y) {
    var job = generation.job;
    long[] reduced = new long[generation.patterns.size()];
    for (int p = 0; p < reduced.length; p++) {
      var pattern = generation.patterns.get(p);
      reduced[p] = generation.scale * pattern.price(job) - pattern.worth(y);
      if (pattern.stock() != Pattern.MISSING) {
        reduced[p] -= y[generation.stockRow(pattern.stock())];
      }
    }
    int row = job.kinds() + job.stocks();
    for (int[] patterns : narrowing.added()) {
      long each = y[row++];
      for (int n = 0; each != 0 && n < patterns.length; n++) {
        reduced[patterns[n]] -= each;
      }
    }
    return reduced;
  }

  /** What a pattern adds at least. */
  private static long least(ColumnGeneration generation, int p, long reduced) {
    int v = generation.variable(p);
    if (reduced >= 0) {
      return (long) generation.program.low(v) * reduced;
    }
    int most = generation.patterns.get(p).most(generation.job);
    return (long) Math.min(generation.program.high(v), most) * Math.max(-LARGEST, reduced);
  }
}
