package org.slatwright.benchmarks.cuttingstock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;

/**
 * What most people do by hand: the longest piece first, from the first board begun that has room;
 * else from a new one, the cheapest by length that takes it.
 */
final class FirstFitDecreasing {

  private final CuttingProblem problem;
  private final List<Long> rests = new ArrayList<>();
  private final int[] used;
  private long cost;

  private FirstFitDecreasing(CuttingProblem problem) {
    this.problem = problem;
    this.used = new int[problem.stocks().size()];
  }

  /** Its cost; empty when a piece finds no board. */
  static OptionalLong cost(CuttingProblem problem) {
    FirstFitDecreasing plan = new FirstFitDecreasing(problem);
    List<Demand> longestFirst = new ArrayList<>(problem.demands());
    longestFirst.sort(Comparator.comparingLong(Demand::length).reversed());
    for (Demand demand : longestFirst) {
      for (int piece = 0; piece < demand.count(); piece++) {
        if (!plan.place(demand.length() + problem.kerf())) {
          return OptionalLong.empty();
        }
      }
    }
    return OptionalLong.of(plan.cost);
  }

  private boolean place(long size) {
    for (int board = 0; board < rests.size(); board++) {
      if (rests.get(board) >= size) {
        rests.set(board, rests.get(board) - size);
        return true;
      }
    }
    Optional<Stock> begun =
        problem.stocks().stream()
            .filter(stock -> room(stock) >= size && left(stock))
            .min(Comparator.comparingDouble(s -> (double) s.price() / s.length()));
    begun.ifPresent(stock -> begin(stock, size));
    return begun.isPresent();
  }

  private void begin(Stock stock, long size) {
    used[problem.stocks().indexOf(stock)]++;
    cost += stock.price();
    rests.add(room(stock) - size);
  }

  private long room(Stock stock) {
    return stock.length() - problem.trim() + problem.kerf();
  }

  private boolean left(Stock stock) {
    return used[problem.stocks().indexOf(stock)] < stock.available().orElse(Integer.MAX_VALUE);
  }
}
