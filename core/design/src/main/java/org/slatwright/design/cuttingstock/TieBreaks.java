package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Among plans of one cost the one with the fewest stock lengths, and among those one with the
 * longest rest. Each is asked for as a job of its own, which the same search solves: do all pieces
 * fit just this mix of stock lengths? A rest is asked for as one more piece, since it is one that
 * could be cut.
 */
final class TieBreaks {

  /** For all questions, and for one: what is not answered by then is left as it is. */
  private static final Effort ALL = Effort.ofMilliseconds(60);

  private static final Effort EACH = Effort.ofMilliseconds(10);

  private final Job job;
  private final long price;
  private final long weight;
  private final Work work = new Work(ALL);
  private Plan plan;

  private TieBreaks(Job job, Plan plan) {
    this.job = job;
    this.plan = plan;
    this.price = plan.price(job);
    long sum = 0;
    for (int i = 0; i < job.kinds(); i++) {
      sum += job.weight[i] * job.demand[i];
    }
    this.weight = sum;
  }

  /** A plan of that cost, at least as good; a plan that misses pieces is left as it is. */
  static Plan settle(Job job, Plan plan) {
    if (plan.price(job) < plan.cost(job)) {
      return plan;
    }
    var ties = new TieBreaks(job, plan);
    ties.takeFewerLengths();
    ties.lengthenTheRest();
    return ties.plan;
  }

  private void takeFewerLengths() {
    for (int lengths = 1; lengths < plan.lengths() && !work.isOver(); lengths++) {
      packed(lengths, Optional.empty()).ifPresent(fewer -> plan = fewer);
    }
  }

  /** By halving what is in doubt: where a rest can be had, so can any shorter one. */
  private void lengthenTheRest() {
    long sure = longestRest();
    long tooLong = 1;
    for (var mix : Mixes.of(job, plan.lengths(), price, weight, work)) {
      tooLong = Math.max(tooLong, room(mix) - weight + 1);
    }
    for (long capacity : job.capacity) {
      // a stock length without a piece is not cut
      tooLong = Math.min(tooLong, Math.max(sure + 1, capacity));
    }
    while (sure + 1 < tooLong && !work.isOver()) {
      long rest = sure + (tooLong - sure) / 2;
      var better = packed(plan.lengths(), Optional.of(rest));
      if (better.isPresent()) {
        plan = better.get();
        sure = Math.max(rest, longestRest());
      } else {
        tooLong = rest;
      }
    }
  }

  private long room(int[] mix) {
    long room = 0;
    for (int k = 0; k < mix.length; k++) {
      room += job.capacity[k] * mix[k];
    }
    return room;
  }

  private long longestRest() {
    long longest = 0;
    for (var cut : plan.cuts()) {
      long rest = job.capacity[cut.stock()];
      for (int i = 0; i < cut.pieces().length; i++) {
        rest -= job.weight[i] * cut.pieces()[i];
      }
      longest = Math.max(longest, rest);
    }
    return longest;
  }

  /** All pieces in so many stock lengths at that price, beside a rest. */
  private Optional<Plan> packed(int lengths, Optional<Long> rest) {
    for (var mix : Mixes.of(job, lengths, price, weight + rest.orElse(0L), work)) {
      var packed = work.isOver() ? Optional.<Plan>empty() : packed(mix, rest);
      if (packed.isPresent()) {
        return packed;
      }
    }
    return Optional.empty();
  }

  private Optional<Plan> packed(int[] mix, Optional<Long> rest) {
    var stocks = new ArrayList<CuttingProblem.Stock>();
    for (int k = 0; k < mix.length; k++) {
      stocks.add(new CuttingProblem.Stock(job.capacity[k], 0, OptionalInt.of(mix[k])));
    }
    var demands = new ArrayList<CuttingProblem.Demand>();
    for (int i = 0; i < job.kinds(); i++) {
      demands.add(new CuttingProblem.Demand(job.weight[i], job.demand[i]));
    }
    rest.ifPresent(length -> demands.add(new CuttingProblem.Demand(length, 1)));
    var each = new Work(EACH);
    long given = each.left();
    var solution = CuttingStock.cheapest(new CuttingProblem(0, 0, stocks, demands), each);
    work.spend(given - each.left());
    return solution.missing().stream().allMatch(n -> n == 0)
        ? Optional.of(plan(solution.patterns()))
        : Optional.empty();
  }

  /** The pieces without the rest, which stands last. */
  private Plan plan(List<CuttingSolution.Pattern> patterns) {
    var cuts = new ArrayList<Plan.Cut>();
    for (var pattern : patterns) {
      int[] pieces = new int[job.kinds()];
      int count = 0;
      for (int i = 0; i < pieces.length; i++) {
        pieces[i] = pattern.pieces().get(i);
        count += pieces[i];
      }
      if (count > 0) {
        cuts.add(new Plan.Cut(pattern.stock(), pieces, pattern.times()));
      }
    }
    return Plan.of(cuts);
  }
}
