package org.slatwright.design.cuttingstock;

import java.util.Arrays;

/**
 * What a plan can cost at all: a sum of prices, of stock lengths that together are worth at least
 * as much as all pieces are. A bound is rounded up to the next such cost. Pieces may be valued by
 * their weight or as the pattern program values them; a cost must do for each.
 *
 * <p>A table over all costs (the coin problem, by dynamic programming) where it is not too large;
 * else all multiples of the greatest common divisor of the prices.
 */
final class ReachableCosts {

  private static final int LARGEST_TABLE = 1 << 19;
  private static final long NEVER = -1;

  private final Job job;
  private final long step;
  private final long limit;
  private final Work work;
  private final boolean[] never;

  /**
   * @param limit costs above it do not matter
   */
  ReachableCosts(Job job, long limit, Work work) {
    this.job = job;
    this.limit = limit;
    this.work = work;
    long divisor = job.canMiss() ? job.missingPrice : 0;
    for (long price : job.price) {
      divisor = divisor(divisor, price);
    }
    this.step = Math.max(1, divisor);
    this.never = new boolean[limit / step < LARGEST_TABLE ? (int) (limit / step) + 1 : 0];
  }

  private static long divisor(long one, long other) {
    return other == 0 ? one : divisor(other, one % other);
  }

  /**
   * Takes away the costs whose stock lengths hold too little.
   *
   * @param full what the pieces in each stock are worth at most
   * @param missing what any piece is worth at most
   * @param all what all pieces are worth
   */
  void require(long[] full, long missing, long all) {
    if (never.length == 0) {
      return;
    }
    long[] most = new long[never.length];
    Arrays.fill(most, NEVER);
    most[0] = 0;
    for (int k = 0; k < full.length; k++) {
      if (job.price[k] == 0) {
        most[0] += full[k] * job.available[k];
      }
    }
    for (int k = 0; k < full.length; k++) {
      if (job.price[k] > 0) {
        add(most, job.price[k], full[k], job.unlimited[k] ? Integer.MAX_VALUE : job.available[k]);
      }
    }
    if (job.canMiss()) {
      add(most, job.missingPrice, missing, Integer.MAX_VALUE);
    }
    for (int c = 0; c < never.length; c++) {
      never[c] |= most[c] < all;
    }
  }

  private void add(long[] most, long price, long worth, int available) {
    if (available == Integer.MAX_VALUE) {
      long by = price / step;
      for (int c = (int) Math.min(by, most.length); c < most.length; c++) {
        if (most[c - (int) by] != NEVER) {
          most[c] = Math.max(most[c], most[c - (int) by] + worth);
        }
      }
      work.spend(most.length * 2L);
      return;
    }
    int left = available;
    for (int part = 1; left > 0; part *= 2) {
      int n = Math.min(part, left);
      left -= n;
      long by = Math.multiplyExact(price / step, n);
      for (int c = most.length - 1; c >= by; c--) {
        if (most[c - (int) by] != NEVER) {
          most[c] = Math.max(most[c], most[c - (int) by] + worth * n);
        }
      }
      work.spend(most.length * 2L);
    }
  }

  /** The least cost there is from that on, or that itself when it is above the limit. */
  long from(long cost) {
    long c = -Math.floorDiv(-cost, step);
    while (c < never.length && never[(int) c]) {
      c++;
    }
    return c * step > limit ? Math.max(cost, limit) : c * step;
  }

  /** The greatest cost there is below that; -1 when there is none. */
  long below(long cost) {
    long c = -Math.floorDiv(-cost, step) - 1;
    while (c >= 0 && c < never.length && never[(int) c]) {
      c--;
    }
    return c < 0 ? -1 : c * step;
  }
}
