package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Among plans of one cost the one with the fewest stock lengths, and among those one with the
 * longest rest. Each is asked for as a job of its own, which the same search solves: do all pieces
 * fit just this mix of stock lengths, one of them shorter by the rest that is wanted?
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
      packed(lengths, 0).ifPresent(fewer -> plan = fewer);
    }
  }

  /** By halving what is in doubt: where a rest can be had, so can any shorter one. */
  private void lengthenTheRest() {
    long sure = longestRest();
    long tooLong = 1;
    for (var mix : Mixes.of(job, plan.lengths(), price, weight, work)) {
      tooLong = Math.max(tooLong, room(mix) - weight + 1);
    }
    tooLong = Math.min(tooLong, LongStream.of(job.capacity).max().orElse(0));
    while (sure + 1 < tooLong && !work.isOver()) {
      long rest = sure + (tooLong - sure) / 2;
      var better = packed(plan.lengths(), rest);
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

  /** All pieces in so many stock lengths at that price, {@code rest} left over in one of them. */
  private Optional<Plan> packed(int lengths, long rest) {
    for (var mix : Mixes.of(job, lengths, price, weight + rest, work)) {
      for (int shortened : canLeave(mix, rest)) {
        var packed = work.isOver() ? Optional.<Plan>empty() : packed(mix, shortened, rest);
        if (packed.isPresent()) {
          return packed;
        }
      }
    }
    return Optional.empty();
  }

  /** The stock lengths of the mix that can; where no rest is wanted, any one stands for all. */
  private int[] canLeave(int[] mix, long rest) {
    return IntStream.range(0, mix.length)
        .filter(k -> mix[k] > 0 && job.capacity[k] > rest)
        .limit(rest == 0 ? 1 : mix.length)
        .toArray();
  }

  private Optional<Plan> packed(int[] mix, int shortened, long rest) {
    var stocks = new ArrayList<CuttingProblem.Stock>();
    for (int k = 0; k < mix.length; k++) {
      int whole = k == shortened ? mix[k] - 1 : mix[k];
      stocks.add(new CuttingProblem.Stock(job.capacity[k], 0, OptionalInt.of(whole)));
    }
    long left = job.capacity[shortened] - rest;
    stocks.add(new CuttingProblem.Stock(left, 0, OptionalInt.of(1)));
    var each = new Work(EACH);
    long given = each.left();
    var solution = CuttingStock.cheapest(new CuttingProblem(0, 0, stocks, demands()), each);
    work.spend(given - each.left());
    return solution.missing().stream().allMatch(n -> n == 0)
        ? Optional.of(plan(solution.patterns(), shortened))
        : Optional.empty();
  }

  private List<CuttingProblem.Demand> demands() {
    return IntStream.range(0, job.kinds())
        .mapToObj(i -> new CuttingProblem.Demand(job.weight[i], job.demand[i]))
        .toList();
  }

  /** With the stock length that was shortened, which stands last, as it is. */
  private Plan plan(List<CuttingSolution.Pattern> patterns, int shortened) {
    var cuts = new ArrayList<Plan.Cut>();
    for (var pattern : patterns) {
      int[] pieces = pattern.pieces().stream().mapToInt(Integer::intValue).toArray();
      int stock = pattern.stock() == job.stocks() ? shortened : pattern.stock();
      if (IntStream.of(pieces).sum() > 0) {
        cuts.add(new Plan.Cut(stock, pieces, pattern.times()));
      }
    }
    return Plan.of(cuts);
  }
}
