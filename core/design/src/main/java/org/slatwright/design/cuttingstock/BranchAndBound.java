package org.slatwright.design.cuttingstock;

import java.util.Optional;

/**
 * The pattern program in whole numbers over all patterns that a better plan can use, by branch and
 * bound (Land and Doig 1960). A branch is cut off only when its {@link IntegerBound} shows that no
 * plan in it can be better.
 */
final class BranchAndBound {

  private static final double NEARLY = 1e-6;

  private final ColumnGeneration generation;
  private final LinearProgram program;
  private final Job job;
  private final Best best;
  private final Work work;
  private final Narrowing narrowing;
  private final Branching branching;
  private boolean complete = true;

  BranchAndBound(ColumnGeneration generation, Best best, Work work) {
    this.generation = generation;
    this.program = generation.program;
    this.job = generation.job;
    this.best = best;
    this.work = work;
    this.narrowing = new Narrowing(generation);
    this.branching = new Branching(generation, narrowing, work);
  }

  /** Looks for better plans; whether there is proved to be no better one than the best now. */
  boolean run() {
    for (int i = 0; i < job.kinds(); i++) {
      program.boundRow(i, job.demand[i], Double.POSITIVE_INFINITY);
    }
    for (int k = 0; k < job.stocks(); k++) {
      program.boundRow(generation.stockRow(k), 0, job.available[k]);
    }
    explore();
    return complete;
  }

  private void explore() {
    if (best.target() < 0) {
      return;
    }
    var end = program.solve();
    if (end == LinearProgram.End.STOPPED || work.isOver()) {
      complete = false;
    } else if (end == LinearProgram.End.IMPOSSIBLE) {
      complete &= isImpossible();
    } else {
      exploreSolved();
    }
  }

  /** Any multiple of the ray may be added: the larger the higher the bound, but the less exact. */
  private boolean isImpossible() {
    double[] duals = program.duals();
    double[] ray = program.ray();
    for (double times = 1.0 / 1024; times < 1e6; times *= 4) {
      double[] sum = duals.clone();
      for (int r = 0; r < sum.length; r++) {
        sum[r] += times * ray[r];
      }
      if (isBeyondGoal(bound(sum))) {
        return true;
      }
    }
    return false;
  }

  private void exploreSolved() {
    var bound = bound(program.duals());
    if (isBeyondGoal(bound)) {
      return;
    }
    bound.ifPresent(this::dropUseless);
    double[] x = program.values();
    best.offer(rounded(x));
    if (best.target() >= 0 && !isBeyondGoal(bound(program.duals()))) {
      branch(x);
    }
  }

  private Optional<IntegerBound> bound(double[] duals) {
    return IntegerBound.of(generation, narrowing, duals, work);
  }

  private boolean isBeyondGoal(Optional<IntegerBound> bound) {
    return bound.isPresent() && bound.get().value() > goal();
  }

  private long goal() {
    return generation.scale * best.target();
  }

  /** No better plan cuts a pattern once more than it must that costs more than there is to lose. */
  private void dropUseless(IntegerBound bound) {
    for (int p = 0; p < bound.reduced().length; p++) {
      int v = generation.variable(p);
      if (bound.reduced()[p] > goal() - bound.value() && program.high(v) > program.low(v)) {
        narrowing.limit(v, program.low(v), program.low(v));
      }
    }
  }

  /** What the program cuts a whole number of times, the rest by first fit decreasing. */
  private Plan rounded(double[] x) {
    var rounded = new PartialPlan(job);
    for (int p = 0; p < generation.patterns.size(); p++) {
      var pattern = generation.patterns.get(p);
      int times = (int) (x[generation.variable(p)] + NEARLY);
      if (times > 0 && pattern.stock() != Pattern.MISSING) {
        rounded.cut(pattern, times);
      }
    }
    var plan = rounded.filled();
    work.spend(100L * job.kinds() + plan.lengths() * 20L);
    return plan;
  }

  private void branch(double[] x) {
    var halves = branching.halves(x);
    // whole numbers, and yet no better plan: rounding is to blame
    complete &= !halves.isEmpty();
    for (var half : halves) {
      if (!work.isOver()) {
        narrowing.within(half, this::explore);
        complete &= !work.isOver();
      }
    }
  }
}
