package org.slatwright.design.cuttingstock;

/** The best plan so far, and what a better one would have to cost. */
final class Best {

  private final Job job;
  private final ReachableCosts costs;
  private Plan plan;
  private long cost;
  private long target;

  Best(Job job, Plan plan, ReachableCosts costs) {
    this.job = job;
    this.costs = costs;
    this.plan = plan;
    this.cost = plan.cost(job);
    this.target = costs.below(cost);
  }

  /** Keeps it if it costs less than the best, or as much with fewer stock lengths. */
  void offer(Plan other) {
    long otherCost = other.cost(job);
    if (otherCost < cost || otherCost == cost && other.lengths() < plan.lengths()) {
      plan = other;
      cost = otherCost;
      target = costs.below(cost);
    }
  }

  /** Call when there are fewer costs than there were. */
  void refresh() {
    target = costs.below(cost);
  }

  Plan plan() {
    return plan;
  }

  long cost() {
    return cost;
  }

  /** The most that a better plan can cost; -1 when there can be none. */
  long target() {
    return target;
  }
}
