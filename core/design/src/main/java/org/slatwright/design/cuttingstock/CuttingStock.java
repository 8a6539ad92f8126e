package org.slatwright.design.cuttingstock;

import java.util.List;
import java.util.stream.LongStream;

/** Solves cutting stock problems. */
public final class CuttingStock {

  private static final int MOST_PATTERNS = 40_000;

  /** Filled before the pattern program, which is seldom needed where a filled plan is proved. */
  private static final int FIRST_PLANS = 20;

  /** Filled after it, as long as their share of the work lasts. */
  private static final int MORE_PLANS = 1_000;

  private static final int FIRST_DEPARTURES = 10;

  private final Job job;
  private final Work work;
  private final ReachableCosts costs;
  private final Best best;
  private long bound;

  private CuttingStock(Job job, Work work) {
    this.job = job;
    this.work = work;
    var first = FirstFit.plan(job);
    this.costs = new ReachableCosts(job, first.cost(job), work);
    this.best = new Best(job, first, costs);
  }

  /**
   * The plan that misses the fewest pieces and among those costs least. That it does is proved
   * within the effort wherever it can be, as {@link CuttingSolution#isProved} says.
   *
   * <p>Among plans of one cost that miss nothing it is one with the fewest stock lengths, and among
   * those one with the longest rest, both sought in a small part of the effort and exact where that
   * suffices; then the other rests are gathered to be few and long. Which pieces are missing, when
   * some are, is not chosen. The same problem has the same plan.
   */
  public static CuttingSolution solve(CuttingProblem problem, Effort effort) {
    var job = new Job(problem);
    var search = new CuttingStock(job, new Work(effort));
    search.run();
    var plan = TieBreaks.settle(job, Rests.gather(job, search.best.plan()));
    return job.solution(Rests.gather(job, plan), search.bound);
  }

  /** The same without any choice among plans of one cost. */
  static CuttingSolution cheapest(CuttingProblem problem, Work work) {
    var job = new Job(problem);
    var search = new CuttingStock(job, work);
    search.run();
    return job.solution(search.best.plan(), search.bound);
  }

  private void run() {
    search();
    if (isProved()) {
      bound = best.cost();
    }
  }

  private void search() {
    if (best.cost() == 0) {
      return;
    }
    costs.require(job.capacity, job.weight[0], sum(job.weight));
    new LargePieces(job).limit(costs);
    best.refresh();
    raise(0);
    var values = new ValueCorrection(job, best, work);
    values.run(FIRST_PLANS, bound, work.left() / 10_000 * job.kinds());
    if (!isProved()) {
      searchPatterns(values);
    }
  }

  private void searchPatterns(ValueCorrection values) {
    var generation = new ColumnGeneration(job, work);
    generation.start(best.plan());
    long scaled = generation.solve(job.demand, job.available, Integer.MAX_VALUE, work.left() / 5);
    long[] worth = generation.worth();
    long[] excess = generation.excess();
    raise(-Math.floorDiv(-scaled, generation.scale));
    if (isProved()) {
      return;
    }
    limitCosts(worth, excess, generation.scale);
    var dive = new Dive(generation, best, work);
    int choices = dive.run(-1, 0);
    depart(dive, choices, Math.min(choices, FIRST_DEPARTURES));
    if (!isProved()) {
      values.run(MORE_PLANS, bound, work.left() / 5_000 * job.kinds());
    }
    if (isProved() || work.isOver()) {
      return;
    }
    long gap = generation.scale * best.target() - scaled;
    PatternEnumeration.within(job, worth, excess, generation.scale, gap, MOST_PATTERNS, work)
        .ifPresentOrElse(
            patterns -> searchAll(patterns, generation), () -> depart(dive, choices, choices * 3));
  }

  /** Dives that depart from the first, at each of its choices in turn. */
  private void depart(Dive dive, int choices, int dives) {
    for (int d = 0; d < dives && !isProved() && !work.isOver(); d++) {
      dive.run(d % choices, 1 + d / choices);
    }
  }

  private void searchAll(List<Pattern> patterns, ColumnGeneration generation) {
    patterns.forEach(generation::add);
    if (new BranchAndBound(generation, best, work).run()) {
      bound = best.cost();
    }
  }

  private void raise(long to) {
    bound = Math.max(bound, Math.min(best.cost(), costs.from(to)));
  }

  private void limitCosts(long[] worth, long[] excess, long scale) {
    long[] full = new long[job.stocks()];
    for (int k = 0; k < full.length; k++) {
      full[k] = scale * job.price[k] + excess[k];
    }
    costs.require(full, LongStream.of(worth).max().orElse(0), sum(worth));
    best.refresh();
    raise(bound);
  }

  private long sum(long[] each) {
    long sum = 0;
    for (int i = 0; i < each.length; i++) {
      sum += each[i] * job.demand[i];
    }
    return sum;
  }

  private boolean isProved() {
    return best.target() < bound;
  }
}
