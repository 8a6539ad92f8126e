package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A plan in the making: what is cut, and what is left to cut and to cut it from. */
final class PartialPlan {

  private final Job job;
  private final int[] demand;
  private final int[] available;
  private final List<Plan.Cut> cuts = new ArrayList<>();
  private long spent;

  PartialPlan(Job job) {
    this.job = job;
    this.demand = job.demand.clone();
    this.available = job.available.clone();
  }

  /** What is left to cut; not to be written to. */
  int[] demand() {
    return demand;
  }

  /** What is left to cut it from; not to be written to. */
  int[] available() {
    return available;
  }

  /** What it costs so far. */
  long spent() {
    return spent;
  }

  boolean isDone() {
    return IntStream.of(demand).allMatch(n -> n == 0);
  }

  /** Cuts a pattern so often, while that gives any piece that is wanted; whether it ever did. */
  boolean cut(Pattern pattern, int times) {
    if (pattern.stock() == Pattern.MISSING) {
      return miss(pattern.kinds()[0], times);
    }
    int done = 0;
    while (done < times && available[pattern.stock()] > 0 && cutOnce(pattern)) {
      done++;
    }
    return done > 0;
  }

  private boolean cutOnce(Pattern pattern) {
    int[] pieces = new int[job.kinds()];
    boolean useful = false;
    for (int e = 0; e < pattern.kinds().length; e++) {
      int kind = pattern.kinds()[e];
      pieces[kind] = Math.min(demand[kind], pattern.counts()[e]);
      demand[kind] -= pieces[kind];
      useful |= pieces[kind] > 0;
    }
    if (useful) {
      available[pattern.stock()]--;
      spent += job.price[pattern.stock()];
      cuts.add(new Plan.Cut(pattern.stock(), pieces, 1));
    }
    return useful;
  }

  private boolean miss(int kind, int times) {
    int n = Math.min(times, demand[kind]);
    demand[kind] -= n;
    spent += job.missingPrice * n;
    return n > 0;
  }

  /** With what is left to cut laid by first fit decreasing. */
  Plan filled() {
    var whole = new ArrayList<>(cuts);
    whole.addAll(FirstFit.plan(job, demand, available));
    return Plan.of(whole);
  }
}
