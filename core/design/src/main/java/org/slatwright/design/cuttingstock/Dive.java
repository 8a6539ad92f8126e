package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;

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
  private final Job job;
  private final Best best;

  private int[] demand = new int[0];
  private int[] available = new int[0];
  private List<Plan.Cut> cuts = new ArrayList<>();
  private long spent;

  Dive(ColumnGeneration generation, Best best) {
    this.generation = generation;
    this.job = generation.job;
    this.best = best;
  }

  /**
   * Looks for better plans.
   *
   * @param departure at which choice to take another pattern; -1 for none
   * @param other how many patterns to pass over there
   * @return how many choices there were
   */
  int run(int departure, int other, Work work) {
    demand = job.demand.clone();
    available = job.available.clone();
    cuts = new ArrayList<>();
    spent = 0;
    int choices = 0;
    while (!work.isOver()) {
      if (isHopeless() || work.isOver()) {
        return choices;
      }
      int pass = choices == departure ? other : 0;
      if (!wholes(pass > 0)) {
        choices++;
        if (!mostNearly(pass)) {
          return choices;
        }
      }
      var whole = new ArrayList<>(cuts);
      whole.addAll(FirstFit.plan(job, demand, available));
      best.offer(Plan.of(whole));
      boolean done = true;
      for (int d : demand) {
        done &= d == 0;
      }
      if (done) {
        return choices;
      }
    }
    return choices;
  }

  private boolean isHopeless() {
    if (spent + generation.guess(demand, available, ROUNDS) - 1e-6 <= best.target()) {
      return false;
    }
    long bound = generation.solve(demand, available, ROUNDS, 0);
    return spent - Math.floorDiv(-bound, generation.scale) > best.target();
  }

  private boolean wholes(boolean skip) {
    double[] x = generation.program.values();
    boolean any = false;
    for (int p = 0; p < generation.patterns.size() && !skip; p++) {
      int times = (int) (x[generation.variable(p)] + NEARLY);
      if (times > 0) {
        any |= cut(generation.patterns.get(p), times);
      }
    }
    return any;
  }

  private boolean mostNearly(int pass) {
    double[] x = generation.program.values();
    boolean[] passed = new boolean[generation.patterns.size()];
    int chosen = -1;
    for (int n = 0; n <= pass; n++) {
      chosen = -1;
      for (int p = 0; p < passed.length; p++) {
        double part = fraction(x[generation.variable(p)]);
        if (part > NEARLY
            && !passed[p]
            && (chosen < 0 || part > fraction(x[generation.variable(chosen)]) + NEARLY)) {
          chosen = p;
        }
      }
      if (chosen < 0) {
        return false;
      }
      passed[chosen] = true;
    }
    return cut(generation.patterns.get(chosen), 1);
  }

  private static double fraction(double x) {
    return x - Math.floor(x + NEARLY);
  }

  private boolean cut(Pattern pattern, int times) {
    boolean any = false;
    if (pattern.stock() == Pattern.MISSING) {
      int kind = pattern.kinds()[0];
      int n = Math.min(times, demand[kind]);
      demand[kind] -= n;
      spent += job.missingPrice * n;
      return n > 0;
    }
    for (int n = 0; n < times && available[pattern.stock()] > 0; n++) {
      int[] pieces = new int[job.kinds()];
      boolean useful = false;
      for (int e = 0; e < pattern.kinds().length; e++) {
        int kind = pattern.kinds()[e];
        pieces[kind] = Math.min(demand[kind], pattern.counts()[e]);
        demand[kind] -= pieces[kind];
        useful |= pieces[kind] > 0;
      }
      if (!useful) {
        break;
      }
      available[pattern.stock()]--;
      spent += job.price[pattern.stock()];
      cuts.add(new Plan.Cut(pattern.stock(), pieces, 1));
      any = true;
    }
    return any;
  }
}
