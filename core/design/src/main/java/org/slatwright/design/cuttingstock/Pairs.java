package org.slatwright.design.cuttingstock;

import java.util.Arrays;
import java.util.Optional;

/**
 * Which two kinds of piece to branch on: in every plan the patterns that hold both are cut a whole
 * number of times together (Ryan and Foster 1981; Vanderbeck 1999). A kind makes a pair with itself
 * where a pattern holds two of it.
 */
final class Pairs {

  private static final double NEARLY = 1e-6;

  private final ColumnGeneration generation;
  private final Job job;
  private final Work work;

  Pairs(ColumnGeneration generation, Work work) {
    this.generation = generation;
    this.job = generation.job;
    this.work = work;
  }

  /**
   * Two kinds that are not cut together a whole number of times.
   *
   * @param holding the patterns that hold both
   * @param floor the whole number below how often the program cuts those
   */
  record Pair(int[] holding, double floor) {}

  /** The pair to branch on, given the program's values, if there is one. */
  Optional<Pair> choose(double[] x) {
    double[] together = together(x);
    int chosen = -1;
    double most = NEARLY * 100;
    for (int pair = 0; pair < together.length; pair++) {
      double score = score(pair, together[pair]);
      if (score > most) {
        most = score;
        chosen = pair;
      }
    }
    return chosen < 0
        ? Optional.empty()
        : Optional.of(new Pair(holding(one(chosen), other(chosen)), floor(together[chosen])));
  }

  /** How often each two kinds are cut together. */
  private double[] together(double[] x) {
    double[] together = new double[job.kinds() * job.kinds()];
    for (int p = 0; p < generation.patterns.size(); p++) {
      double times = x[generation.variable(p)];
      if (times > NEARLY) {
        add(generation.patterns.get(p), times, together);
      }
    }
    work.spend(together.length);
    return together;
  }

  private void add(Pattern pattern, double times, double[] together) {
    int size = pattern.kinds().length;
    for (int e = 0; e < size; e++) {
      int row = pattern.kinds()[e] * job.kinds();
      if (pattern.counts()[e] > 1) {
        together[row + pattern.kinds()[e]] += times;
      }
      for (int f = e + 1; f < size; f++) {
        together[row + pattern.kinds()[f]] += times;
      }
    }
  }

  /** Best half way between two whole numbers or a little below the upper, and of heavy pieces. */
  private double score(int pair, double times) {
    double part = times - floor(times);
    if (part < NEARLY || part > 1 - NEARLY) {
      return 0;
    }
    double score = part > 0.5 ? 1.5 - part : part;
    long weight = job.weight[one(pair)] + job.weight[other(pair)];
    return score * (1 + 0.1 * weight / (2.0 * job.weight[0]));
  }

  private static double floor(double times) {
    return Math.floor(times + NEARLY);
  }

  private int one(int pair) {
    return pair / job.kinds();
  }

  private int other(int pair) {
    return pair % job.kinds();
  }

  private int[] holding(int one, int other) {
    int[] holding = new int[generation.patterns.size()];
    int size = 0;
    for (int p = 0; p < holding.length; p++) {
      if (generation.patterns.get(p).holds(one, other)) {
        holding[size++] = p;
      }
    }
    work.spend(holding.length * 5L);
    return Arrays.copyOf(holding, size);
  }
}
