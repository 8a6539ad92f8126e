package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All full patterns that a plan within a cost can use: those whose price is above the worth of
 * their pieces by no more than the gap between the bound and that cost (fixing by reduced cost). A
 * pattern is full when no further piece fits it; every plan can be made one of full patterns that
 * cut some pieces too many.
 */
final class PatternEnumeration {

  private final Job job;
  private final long[] worth;
  private final Work work;
  private final int limit;
  private final int[] order;
  private final double[] ratio;
  private final long[] lightest;
  private final int[] taken;
  private final List<Pattern> found = new ArrayList<>();

  private int stock;
  private long least;
  private boolean tooMany;

  private PatternEnumeration(Job job, long[] worth, int limit, Work work) {
    this.job = job;
    this.worth = worth;
    this.limit = limit;
    this.work = work;
    int kinds = job.kinds();
    this.taken = new int[kinds];
    this.order = new int[kinds];
    this.ratio = new double[kinds];
    this.lightest = new long[kinds + 1];
    for (int i = 0; i < kinds; i++) {
      int to = i;
      double key = (double) worth[i] / job.weight[i];
      while (to > 0 && ratio[to - 1] < key) {
        order[to] = order[to - 1];
        ratio[to] = ratio[to - 1];
        to--;
      }
      order[to] = i;
      ratio[to] = key;
    }
    lightest[kinds] = Long.MAX_VALUE;
    for (int at = kinds - 1; at >= 0; at--) {
      ratio[at] *= 1 + 1e-14;
      lightest[at] = Math.min(lightest[at + 1], job.weight[order[at]]);
    }
  }

  /**
   * The patterns; empty when there are more than a limit.
   *
   * @param worth of each kind of piece, at least 0
   * @param excess of each stock: what its best pattern is worth above its price, at least 0
   * @param scale whole numbers to a unit of price
   * @param gap in that scale
   */
  static Optional<List<Pattern>> within(
      Job job, long[] worth, long[] excess, long scale, long gap, int limit, Work work) {
    var enumeration = new PatternEnumeration(job, worth, limit, work);
    for (int k = 0; k < job.stocks(); k++) {
      enumeration.stock = k;
      enumeration.least = scale * job.price[k] + excess[k] - gap;
      enumeration.search(0, job.capacity[k], 0);
    }
    for (int i = 0; i < job.kinds(); i++) {
      if (job.mayMiss[i] && scale * job.missingPrice - worth[i] <= gap) {
        enumeration.found.add(Pattern.missing(i));
      }
    }
    return enumeration.tooMany ? Optional.empty() : Optional.of(enumeration.found);
  }

  private void search(int at, long room, long value) {
    if (tooMany) {
      return;
    }
    if (at == order.length || room < lightest[at]) {
      if (value >= least && isFull(room) && !isCheaperElsewhere(room)) {
        found.add(Pattern.of(stock, taken));
        tooMany |= found.size() > limit;
      }
      return;
    }
    if (!work.spend(8)) {
      tooMany = true;
    }
    if (value + (long) (room * ratio[at]) < least) {
      return;
    }
    int kind = order[at];
    long weight = job.weight[kind];
    for (int n = (int) Math.min(job.demand[kind], room / weight); n >= 0; n--) {
      taken[kind] = n;
      search(at + 1, room - n * weight, value + n * worth[kind]);
    }
    taken[kind] = 0;
  }

  private boolean isFull(long room) {
    work.spend(taken.length);
    for (int i = taken.length - 1; i >= 0; i--) {
      if (taken[i] < job.demand[i]) {
        return job.weight[i] > room;
      }
    }
    return true;
  }

  private boolean isCheaperElsewhere(long room) {
    long full = job.capacity[stock] - room;
    for (int k = 0; k < stock; k++) {
      if (job.unlimited[k] && job.price[k] < job.price[stock] && job.capacity[k] >= full) {
        return true;
      }
    }
    return false;
  }
}
