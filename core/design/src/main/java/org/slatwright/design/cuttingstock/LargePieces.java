package org.slatwright.design.cuttingstock;

/**
 * Values of pieces that show how many stock lengths the large ones take by themselves. A piece that
 * leaves no room for another of at least some weight is worth the whole of the longest stock
 * length, smaller ones down to that weight what they weigh, and the smallest nothing (Martello and
 * Toth 1990, the bound L2).
 */
final class LargePieces {

  private final Job job;
  private final long longest;

  LargePieces(Job job) {
    this.job = job;
    long most = 0;
    for (long capacity : job.capacity) {
      most = Math.max(most, capacity);
    }
    this.longest = most;
  }

  /** Takes away the costs that do not pay for that, each weight in turn being the least. */
  void limit(ReachableCosts costs) {
    for (long least : job.weight) {
      if (least * 2 <= longest) {
        costs.require(full(least), longest, all(least));
      }
    }
  }

  private long all(long least) {
    long all = 0;
    for (int i = 0; i < job.kinds(); i++) {
      all += worth(job.weight[i], least) * job.demand[i];
    }
    return all;
  }

  private long worth(long weight, long least) {
    if (weight > longest - least) {
      return longest;
    }
    return weight < least ? 0 : weight;
  }

  /** A shorter stock length is worth the whole of the longest when it holds one of the large. */
  private long[] full(long least) {
    long[] full = job.capacity.clone();
    for (int k = 0; k < full.length; k++) {
      for (long weight : job.weight) {
        if (weight <= job.capacity[k] && weight > longest - least) {
          full[k] = longest;
        }
      }
    }
    return full;
  }
}
