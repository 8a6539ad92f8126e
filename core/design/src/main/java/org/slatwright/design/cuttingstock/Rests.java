package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.Arrays;

/**
 * Gathers what is left over in few long rests, which can be used again: the pieces of two stock
 * lengths are shared out anew, one filled as full as can be, as long as that leaves a longer rest
 * in the other. A stock length that is emptied so is not cut at all.
 */
final class Rests {

  /** Apart from the search, so that a search that ran out of time still gathers. */
  private static final Effort EFFORT = Effort.ofMilliseconds(10);

  private static final int ROUNDS = 4;

  private final Job job;
  private final Work work = new Work(EFFORT);
  private final Knapsack knapsack;
  private final int[] stock;
  private final int[][] pieces;
  private final long[] rest;

  private Rests(Job job, Plan plan) {
    this.job = job;
    this.knapsack = new Knapsack(job.weight, work);
    int size = plan.cuts().stream().mapToInt(Plan.Cut::times).sum();
    this.stock = new int[size];
    this.pieces = new int[size][];
    this.rest = new long[size];
    int at = 0;
    for (var cut : plan.cuts()) {
      for (int n = 0; n < cut.times(); n++) {
        stock[at] = cut.stock();
        pieces[at] = cut.pieces();
        rest[at] = restOf(at);
        at++;
      }
    }
  }

  /** The same pieces from the same stock, or from less of it. */
  static Plan gather(Job job, Plan plan) {
    var rests = new Rests(job, plan);
    for (int round = 0; round < ROUNDS && rests.round(); round++) {
      // each round starts from what the last one left
    }
    var cuts = new ArrayList<Plan.Cut>();
    for (int b = 0; b < rests.stock.length; b++) {
      if (Arrays.stream(rests.pieces[b]).anyMatch(n -> n > 0)) {
        cuts.add(new Plan.Cut(rests.stock[b], rests.pieces[b], 1));
      }
    }
    return Plan.of(cuts);
  }

  private boolean round() {
    boolean better = false;
    for (int one = 0; one < stock.length; one++) {
      for (int other = 0; other < stock.length; other++) {
        if (one != other && rest[one] > 0 && rest[other] > 0 && !work.isOver()) {
          better |= fill(one, other);
        }
      }
    }
    return better;
  }

  private boolean fill(int full, int emptied) {
    int[] pool = new int[job.kinds()];
    for (int i = 0; i < pool.length; i++) {
      pool[i] = pieces[full][i] + pieces[emptied][i];
    }
    work.spend(pool.length * 10L);
    long floor = job.capacity[stock[full]] - Math.min(rest[full], rest[emptied]);
    knapsack.value(job.weight, pool);
    if (knapsack.best(job.capacity[stock[full]], floor) <= floor || work.isOver()) {
      return false;
    }
    pieces[full] = knapsack.pieces();
    pieces[emptied] = new int[pool.length];
    for (int i = 0; i < pool.length; i++) {
      pieces[emptied][i] = pool[i] - pieces[full][i];
    }
    rest[full] = restOf(full);
    rest[emptied] = restOf(emptied);
    return true;
  }

  private long restOf(int board) {
    long room = job.capacity[stock[board]];
    for (int i = 0; i < job.kinds(); i++) {
      room -= pieces[board][i] * job.weight[i];
    }
    return room;
  }
}
