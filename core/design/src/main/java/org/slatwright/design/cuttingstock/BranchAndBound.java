package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The pattern program in whole numbers over all patterns that a better plan can use, by branch and
 * bound (Land and Doig 1960). It branches on how many of a stock are cut, then on how many patterns
 * hold two certain pieces together (Ryan and Foster 1981; Vanderbeck 1999), then on one pattern.
 *
 * <p>A branch is cut off only when its multipliers, rounded to whole numbers, bound it in whole
 * numbers (as Neumaier and Shcherbina 2004 do with intervals).
 */
final class BranchAndBound {

  private static final double NEARLY = 1e-6;

  /** Multipliers that could overflow a sum are given up. */
  private static final long LARGEST = 1L << 58;

  private final ColumnGeneration generation;
  private final LinearProgram program;
  private final Job job;
  private final Best best;
  private final Work work;
  private final int patterns;
  private final int[] most;

  /** Rows in the order of the program: members of those that were added on the way. */
  private final List<int[]> members = new ArrayList<>();

  /** The range of each row, as the program has it. */
  private double[] rowLow = new double[64];

  private double[] rowHigh = new double[64];

  /** What is to be put back on the way up: variable, then its former highest. */
  private final List<Runnable> undo = new ArrayList<>();

  private boolean complete = true;
  private final double[] together;

  BranchAndBound(ColumnGeneration generation, Best best, Work work) {
    this.generation = generation;
    this.program = generation.program;
    this.job = generation.job;
    this.best = best;
    this.work = work;
    this.patterns = generation.patterns.size();
    this.most = new int[patterns];
    for (int p = 0; p < patterns; p++) {
      most[p] = generation.patterns.get(p).most(job);
    }
    this.together = new double[job.kinds() * job.kinds()];
    for (int i = 0; i < job.kinds(); i++) {
      range(i, job.demand[i], Double.POSITIVE_INFINITY);
    }
    for (int k = 0; k < job.stocks(); k++) {
      range(generation.stockRow(k), 0, job.available[k]);
    }
  }

  /** Looks for better plans; whether there is proved to be no better one than the best now. */
  boolean run() {
    explore();
    return complete;
  }

  private void range(int row, double low, double high) {
    if (row >= rowLow.length) {
      rowLow = Arrays.copyOf(rowLow, row * 2);
      rowHigh = Arrays.copyOf(rowHigh, row * 2);
    }
    rowLow[row] = low;
    rowHigh[row] = high;
    program.boundRow(row, low, high);
  }

  private void explore() {
    if (best.target() < 0) {
      return;
    }
    var end = program.solve();
    if (end == LinearProgram.End.STOPPED || work.isOver()) {
      complete = false;
      return;
    }
    if (end == LinearProgram.End.IMPOSSIBLE) {
      complete &= isImpossible();
      return;
    }
    if (isBoundAbove(program.duals(), true)) {
      return;
    }
    double[] x = program.values();
    offerRounded(x);
    if (best.target() < 0 || isBoundAbove(program.duals(), false)) {
      return;
    }
    branch(x);
  }

  private boolean isImpossible() {
    double[] duals = program.duals();
    double[] ray = program.ray();
    for (double times = 1.0 / 1024; times < 1e6; times *= 4) {
      double[] sum = duals.clone();
      for (int r = 0; r < sum.length; r++) {
        sum[r] += times * ray[r];
      }
      if (isBoundAbove(sum, false)) {
        return true;
      }
    }
    return false;
  }

  /** Whether no plan in this branch can be better, reckoned in whole numbers. */
  private boolean isBoundAbove(double[] duals, boolean fix) {
    long goal = generation.scale * best.target();
    int rows = program.rows();
    long[] y = new long[rows];
    long bound = 0;
    for (int r = 0; r < rows; r++) {
      y[r] = generation.scaled(duals[r]);
      if (y[r] < 0 && rowHigh[r] == Double.POSITIVE_INFINITY
          || y[r] > 0 && rowLow[r] == Double.NEGATIVE_INFINITY) {
        y[r] = 0;
      }
      long end = (long) (y[r] < 0 ? rowHigh[r] : rowLow[r]);
      if (Math.abs(y[r]) > LARGEST / (1 + end)) {
        return false;
      }
      bound += y[r] * end;
      if (Math.abs(bound) > LARGEST * 4) {
        return false;
      }
    }
    long[] reduced = new long[patterns];
    for (int p = 0; p < patterns; p++) {
      var pattern = generation.patterns.get(p);
      reduced[p] = generation.scale * pattern.price(job) - pattern.worth(y);
      if (pattern.stock() != Pattern.MISSING) {
        reduced[p] -= y[generation.stockRow(pattern.stock())];
      }
    }
    int base = job.kinds() + job.stocks();
    for (int m = 0; m < members.size(); m++) {
      if (y[base + m] != 0) {
        for (int p : members.get(m)) {
          reduced[p] -= y[base + m];
        }
      }
    }
    work.spend(patterns * 12L);
    for (int p = 0; p < patterns; p++) {
      int v = generation.variable(p);
      if (reduced[p] > 0) {
        bound += (long) program.low(v) * reduced[p];
      } else if (reduced[p] < 0) {
        bound += (long) Math.min(program.high(v), most[p]) * Math.max(-LARGEST, reduced[p]);
      }
      if (bound < -LARGEST) {
        return false;
      }
    }
    if (bound > goal) {
      return true;
    }
    for (int p = 0; fix && p < patterns; p++) {
      int v = generation.variable(p);
      if (reduced[p] > goal - bound && program.high(v) > program.low(v)) {
        limit(v, program.low(v), program.low(v));
      }
    }
    return false;
  }

  private void limit(int variable, double low, double high) {
    double lowBefore = program.low(variable);
    double highBefore = program.high(variable);
    undo.add(() -> program.bound(variable, lowBefore, highBefore));
    program.bound(variable, low, high);
  }

  private void offerRounded(double[] x) {
    int[] demand = job.demand.clone();
    int[] available = job.available.clone();
    var cuts = new ArrayList<Plan.Cut>();
    for (int p = 0; p < patterns; p++) {
      var pattern = generation.patterns.get(p);
      int times = (int) (x[generation.variable(p)] + NEARLY);
      for (int n = 0; n < times && pattern.stock() != Pattern.MISSING; n++) {
        int[] pieces = new int[job.kinds()];
        boolean useful = false;
        for (int e = 0; e < pattern.kinds().length; e++) {
          int kind = pattern.kinds()[e];
          pieces[kind] = Math.min(demand[kind], pattern.counts()[e]);
          demand[kind] -= pieces[kind];
          useful |= pieces[kind] > 0;
        }
        if (useful && available[pattern.stock()] > 0) {
          available[pattern.stock()]--;
          cuts.add(new Plan.Cut(pattern.stock(), pieces, 1));
        }
      }
    }
    cuts.addAll(FirstFit.plan(job, demand, available));
    work.spend(100L * job.kinds() + cuts.size() * 20L);
    best.offer(Plan.of(cuts));
  }

  private void branch(double[] x) {
    int stock = -1;
    double most = NEARLY;
    for (int k = 0; k < job.stocks(); k++) {
      double open = open(program.sum(generation.stockRow(k)));
      if (open > most) {
        most = open;
        stock = k;
      }
    }
    if (stock >= 0) {
      int row = generation.stockRow(stock);
      double sum = program.sum(row);
      double low = rowLow[row];
      double high = rowHigh[row];
      double floor = Math.floor(sum);
      boolean up = sum - floor > 0.5;
      both(
          up,
          () -> range(row, floor + 1, high),
          () -> range(row, low, floor),
          () -> range(row, low, high));
      return;
    }
    if (branchOnPair(x)) {
      return;
    }
    int chosen = -1;
    most = NEARLY;
    for (int p = 0; p < patterns; p++) {
      double open = open(x[generation.variable(p)]);
      if (open > most) {
        most = open;
        chosen = p;
      }
    }
    if (chosen < 0) {
      // whole numbers, and yet no better plan: rounding is to blame
      complete = false;
      return;
    }
    int v = generation.variable(chosen);
    double floor = Math.floor(x[v]);
    double low = program.low(v);
    double high = program.high(v);
    both(true, () -> limit(v, floor + 1, high), () -> limit(v, low, floor), () -> {});
  }

  private static double open(double x) {
    double part = x - Math.floor(x);
    return Math.min(part, 1 - part);
  }

  private boolean branchOnPair(double[] x) {
    int kinds = job.kinds();
    Arrays.fill(together, 0);
    for (int p = 0; p < patterns; p++) {
      double times = x[generation.variable(p)];
      if (times > NEARLY) {
        var pattern = generation.patterns.get(p);
        int size = pattern.kinds().length;
        for (int e = 0; e < size; e++) {
          int i = pattern.kinds()[e];
          if (pattern.counts()[e] > 1) {
            together[i * kinds + i] += times;
          }
          for (int f = e + 1; f < size; f++) {
            together[i * kinds + pattern.kinds()[f]] += times;
          }
        }
      }
    }
    work.spend((long) kinds * kinds);
    int chosen = -1;
    double most = NEARLY * 100;
    for (int pair = 0; pair < together.length; pair++) {
      double part = together[pair] - Math.floor(together[pair] + NEARLY);
      double score = part > 0.5 ? 1.5 - part : part;
      if (part < NEARLY || part > 1 - NEARLY) {
        continue;
      }
      score *=
          1 + 0.1 * (job.weight[pair / kinds] + job.weight[pair % kinds]) / (2.0 * job.weight[0]);
      if (score > most) {
        most = score;
        chosen = pair;
      }
    }
    if (chosen < 0) {
      return false;
    }
    int one = chosen / kinds;
    int other = chosen % kinds;
    int[] holding = holding(one, other);
    double floor = Math.floor(together[chosen] + NEARLY);
    both(
        true,
        () -> addRow(holding, floor + 1, Double.POSITIVE_INFINITY),
        () -> addRow(holding, Double.NEGATIVE_INFINITY, floor),
        () -> {});
    return true;
  }

  private int[] holding(int one, int other) {
    int[] holding = new int[patterns];
    int size = 0;
    for (int p = 0; p < patterns; p++) {
      var pattern = generation.patterns.get(p);
      int at = Arrays.binarySearch(pattern.kinds(), one);
      if (at >= 0
          && (one == other
              ? pattern.counts()[at] > 1
              : Arrays.binarySearch(pattern.kinds(), other) >= 0)) {
        holding[size++] = p;
      }
    }
    work.spend(patterns * 5L);
    return Arrays.copyOf(holding, size);
  }

  private void addRow(int[] holding, double low, double high) {
    if (high == 0) {
      for (int p : holding) {
        limit(generation.variable(p), 0, 0);
      }
      return;
    }
    int[] variables = new int[holding.length];
    for (int n = 0; n < holding.length; n++) {
      variables[n] = generation.variable(holding[n]);
    }
    int row = program.addRow(low, high, variables);
    members.add(holding);
    range(row, low, high);
  }

  private void both(boolean upFirst, Runnable up, Runnable down, Runnable after) {
    var basis = program.basis();
    int depth = undo.size();
    int added = members.size();
    for (int turn = 0; turn < 2; turn++) {
      (turn == 0 == upFirst ? up : down).run();
      explore();
      after.run();
      while (undo.size() > depth) {
        undo.remove(undo.size() - 1).run();
      }
      while (members.size() > added) {
        members.remove(members.size() - 1);
      }
      program.restore(basis);
      if (work.isOver()) {
        complete = false;
        return;
      }
    }
  }
}
