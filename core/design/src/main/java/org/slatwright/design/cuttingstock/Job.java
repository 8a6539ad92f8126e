package org.slatwright.design.cuttingstock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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

  private final CuttingProblem problem;
  private final int[] demandAt;
  private final int[] stockAt;

  Job(CuttingProblem problem) {
    this.problem = problem;
    long longest = problem.stocks().stream().mapToLong(this::capacityOf).max().orElse(0);
    this.demandAt =
        IntStream.range(0, problem.demands().size())
            .filter(i -> weightOf(problem.demands().get(i)) <= longest)
            .boxed()
            .sorted(Comparator.comparing(i -> -problem.demands().get(i).length()))
            .mapToInt(i -> i)
            .toArray();
    this.weight = new long[demandAt.length];
    this.demand = new int[demandAt.length];
    for (int i = 0; i < demandAt.length; i++) {
      weight[i] = weightOf(problem.demands().get(demandAt[i]));
      demand[i] = problem.demands().get(demandAt[i]).count();
    }
    int pieces = IntStream.of(demand).sum();
    long shortest = weight.length == 0 ? Long.MAX_VALUE : weight[weight.length - 1];
    this.stockAt =
        IntStream.range(0, problem.stocks().size())
            .filter(k -> capacityOf(problem.stocks().get(k)) >= shortest)
            .filter(k -> problem.stocks().get(k).available().orElse(1) > 0)
            .boxed()
            .sorted(
                Comparator.comparing((Integer k) -> problem.stocks().get(k).price())
                    .thenComparing(k -> problem.stocks().get(k).length())
                    .thenComparing(k -> problem.stocks().get(k).available().orElse(pieces)))
            .mapToInt(k -> k)
            .toArray();
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

  /** What a pattern's pieces weigh. */
  long weigh(int[] pieces) {
    long sum = 0;
    for (int i = 0; i < pieces.length; i++) {
      sum += weight[i] * pieces[i];
    }
    return sum;
  }

  /** The plan in the problem's own order and words. */
  CuttingSolution solution(Plan plan, long lowerBound) {
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
    return new CuttingSolution(patterns, missing, plan.cost(this), lowerBound);
  }
}
