package org.slatwright.design.cuttingstock;

/**
 * Plans in whole numbers from the pattern program: cut what the program cuts a whole number of
 * times, or where there is none what it cuts most nearly once, then solve what is left to cut, and
 * so on. Each further dive departs once from what the first would have chosen (limited discrepancy
 * search, Harvey and Ginsberg 1995).
 */
final class Dive {

  private static final double NEARLY = 1e-6;

  /** Patterns are made only so often for each choice. */
  private static final int ROUNDS = 6;

  private final ColumnGeneration generation;
  private final Best best;
  private final Work work;
  private PartialPlan begun;

  Dive(ColumnGeneration generation, Best best, Work work) {
    this.generation = generation;
    this.best = best;
    this.work = work;
    this.begun = new PartialPlan(generation.job);
  }

  /**
   * Looks for better plans.
   *
   * @param departure at which choice to take another pattern; -1 for none
   * @param other how many patterns to pass over there
   * @return how many choices there were
   */
  int run(int departure, int other) {
    begun = new PartialPlan(generation.job);
    int choices = 0;
    while (!begun.isDone() && !work.isOver() && !isHopeless() && !work.isOver()) {
      int pass = choices == departure ? other : 0;
      if (!wholes(pass > 0)) {
        choices++;
        if (!mostNearly(pass)) {
          return choices;
        }
      }
      best.offer(begun.filled());
    }
    return choices;
  }

  private boolean isHopeless() {
    double guess = generation.guess(begun.demand(), begun.available(), ROUNDS);
    if (begun.spent() + guess - 1e-6 <= best.target()) {
      return false;
    }
    long bound = generation.solve(begun.demand(), begun.available(), ROUNDS, 0);
    return begun.spent() - Math.floorDiv(-bound, generation.scale) > best.target();
  }

  private boolean wholes(boolean skip) {
    double[] x = generation.program.values();
    boolean any = false;
    for (int p = 0; p < generation.patterns.size() && !skip; p++) {
      int times = (int) (x[generation.variable(p)] + NEARLY);
      if (times > 0) {
        any |= begun.cut(generation.patterns.get(p), times);
      }
    }
    return any;
  }

  private boolean mostNearly(int pass) {
    double[] x = generation.program.values();
    boolean[] passed = new boolean[generation.patterns.size()];
    int chosen = mostNearly(x, passed);
    for (int n = 0; n < pass && chosen >= 0; n++) {
      passed[chosen] = true;
      chosen = mostNearly(x, passed);
    }
    return chosen >= 0 && begun.cut(generation.patterns.get(chosen), 1);
  }

  private int mostNearly(double[] x, boolean[] passed) {
    int chosen = -1;
    double most = 0;
    for (int p = 0; p < passed.length; p++) {
      double part = fraction(x[generation.variable(p)]);
      if (part > NEARLY && !passed[p] && (chosen < 0 || part > most + NEARLY)) {
        most = part;
        chosen = p;
      }
    }
    return chosen;
  }

  private static double fraction(double x) {
    return x - Math.floor(x + NEARLY);
  }
}
