package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A cutting stock problem in the form it is solved in: pieces fit when the sum of their weights is
 * at most the capacity. A weight is a piece with its cut, a capacity a stock length without its
 * trim and with the one cut that the last piece may do without.
 *
 * <p>Pieces stand longest first and stocks in a settled order, so that the order of the problem
 * never changes its plan. Pieces that fit nowhere and stocks that hold nothing are left out.
 */
final class Job {

  /** A piece with its cut; all different, the heaviest first. */
  final long[] weight;

  final int[] demand;

  /** What the pieces in a stock length may weigh. */
  final long[] capacity;

  final long[] price;

  /** Never more than there are pieces, since more would never be cut. */
  final int[] available;

  /** Whether there is no limit to a stock but the one above. */
  final boolean[] unlimited;

  /**
   * What a missing piece costs: more than any plan, so that no plan misses a piece to save money.
   */
  final long missingPrice;

  /** Whether pieces of a kind may be missing, since no unlimited stock is long enough. */
  final boolean[] mayMiss;

  private final CuttingProblem problem;
  private final int[] demandAt;
  private final int[] stockAt;

  Job(CuttingProblem problem) {
    this.problem = problem;
    this.demandAt = demandsThatFit();
    this.weight = new long[demandAt.length];
    this.demand = new int[demandAt.length];
    for (int i = 0; i < demandAt.length; i++) {
      weight[i] = weightOf(problem.demands().get(demandAt[i]));
      demand[i] = problem.demands().get(demandAt[i]).count();
    }
    int pieces = pieces();
    this.stockAt = stocksThatHold(pieces);
    this.capacity = new long[stockAt.length];
    this.price = new long[stockAt.length];
    this.available = new int[stockAt.length];
    this.unlimited = new boolean[stockAt.length];
    for (int k = 0; k < stockAt.length; k++) {
      var stock = problem.stocks().get(stockAt[k]);
      capacity[k] = capacityOf(stock);
      price[k] = stock.price();
      unlimited[k] = stock.available().isEmpty();
      available[k] = Math.min(pieces, stock.available().orElse(pieces));
    }
    this.mayMiss = new boolean[weight.length];
    for (int i = 0; i < weight.length; i++) {
      mayMiss[i] = mayMiss(weight[i]);
    }
    this.missingPrice = 1 + priceOfAll();
  }

  /** The heaviest first. */
  private int[] demandsThatFit() {
    long longest = problem.stocks().stream().mapToLong(this::capacityOf).max().orElse(0);
    return IntStream.range(0, problem.demands().size())
        .filter(i -> weightOf(problem.demands().get(i)) <= longest)
        .boxed()
        .sorted(Comparator.comparing(i -> -problem.demands().get(i).length()))
        .mapToInt(i -> i)
        .toArray();
  }

  private int[] stocksThatHold(int pieces) {
    long lightest = LongStream.of(weight).min().orElse(Long.MAX_VALUE);
    return IntStream.range(0, problem.stocks().size())
        .filter(k -> capacityOf(problem.stocks().get(k)) >= lightest)
        .filter(k -> problem.stocks().get(k).available().orElse(1) > 0)
        .boxed()
        .sorted(
            Comparator.comparing((Integer k) -> problem.stocks().get(k).price())
                .thenComparing(k -> problem.stocks().get(k).length())
                .thenComparing(k -> problem.stocks().get(k).available().orElse(pieces)))
        .mapToInt(k -> k)
        .toArray();
  }

  private boolean mayMiss(long weight) {
    return IntStream.range(0, stocks()).noneMatch(k -> unlimited[k] && capacity[k] >= weight);
  }

  private long priceOfAll() {
    return IntStream.range(0, stocks()).mapToLong(k -> price[k] * available[k]).sum();
  }

  private long weightOf(CuttingProblem.Demand demand) {
    return demand.length() + problem.kerf();
  }

  private long capacityOf(CuttingProblem.Stock stock) {
    return stock.length() - problem.trim() + problem.kerf();
  }

  int kinds() {
    return weight.length;
  }

  int stocks() {
    return capacity.length;
  }

  boolean canMiss() {
    for (boolean may : mayMiss) {
      if (may) {
        return true;
      }
    }
    return false;
  }

  int pieces() {
    return IntStream.of(demand).sum();
  }

  /** The highest price, a missing piece's among them where one may be missing; at least 1. */
  long highestPrice() {
    long highest = canMiss() ? missingPrice : 1;
    for (long p : price) {
      highest = Math.max(highest, p);
    }
    return highest;
  }

  /** The plan in the problem's own order and words. */
  CuttingSolution solution(Plan plan, long bound) {
    var patterns = new ArrayList<CuttingSolution.Pattern>();
    int[] left = problem.demands().stream().mapToInt(CuttingProblem.Demand::count).toArray();
    for (var cut : plan.cuts()) {
      int[] pieces = new int[left.length];
      for (int i = 0; i < demandAt.length; i++) {
        pieces[demandAt[i]] = cut.pieces()[i];
        left[demandAt[i]] -= cut.pieces()[i] * cut.times();
      }
      patterns.add(
          new CuttingSolution.Pattern(
              stockAt[cut.stock()], IntStream.of(pieces).boxed().toList(), cut.times()));
    }
    List<Integer> missing = IntStream.of(left).boxed().toList();
    long cost = plan.price(this);
    long lowerBound = Math.max(0, bound - (plan.cost(this) - cost));
    return new CuttingSolution(patterns, missing, cost, lowerBound);
  }
}
