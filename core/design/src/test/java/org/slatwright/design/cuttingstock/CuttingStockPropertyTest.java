package org.slatwright.design.cuttingstock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every cutting plan. */
class CuttingStockPropertyTest {

  private static final Effort SHORT = Effort.ofMilliseconds(50);

  @Property(tries = 300)
  void aPlanIsHonestAndTheSameTwice(@ForAll("jobs") CuttingProblem problem) {
    var solution = CuttingStock.solve(problem, SHORT);
    assertEquals(List.of(), CuttingCheck.faults(problem, solution));
    assertEquals(solution, CuttingStock.solve(problem, SHORT));
  }

  @Property(tries = 200)
  void neitherOrderChangesTheCost(@ForAll("jobs") CuttingProblem problem) {
    var stocks = new ArrayList<>(problem.stocks());
    var demands = new ArrayList<>(problem.demands());
    Collections.reverse(stocks);
    Collections.reverse(demands);
    var turned = new CuttingProblem(problem.kerf(), problem.trim(), stocks, demands);
    assertEquals(
        CuttingStock.solve(problem, SHORT).cost(), CuttingStock.solve(turned, SHORT).cost());
  }

  /** Of every job of this size, since all are proved. */
  @Property(tries = 200)
  void aPieceOfStockOnHandNeverRaisesTheCost(@ForAll("jobs") CuttingProblem problem) {
    var stocks = new ArrayList<>(problem.stocks());
    stocks.add(new CuttingProblem.Stock(70, 0, OptionalInt.of(2)));
    var richer = new CuttingProblem(problem.kerf(), problem.trim(), stocks, problem.demands());
    var before = CuttingStock.solve(problem, Effort.USUAL);
    var after = CuttingStock.solve(richer, Effort.USUAL);
    assertTrue(after.isProved(), () -> after.lowerBound() + " of " + after.cost());
    assertTrue(missing(after) <= missing(before));
    if (missing(before) == missing(after)) {
      assertTrue(after.cost() <= before.cost());
    }
  }

  @Property(tries = 200)
  void aPlanNeverCostsMoreThanFirstFitDecreasing(@ForAll("boughtOnly") CuttingProblem problem) {
    assertTrue(CuttingStock.solve(problem, SHORT).cost() <= firstFitDecreasing(problem));
  }

  @Property(tries = 300)
  void smallJobsAreCutAsWellAsCanBe(@ForAll("small") CuttingProblem problem) {
    var solution = CuttingStock.solve(problem, Effort.USUAL);
    long[] least = new Exhaustive(problem).least();
    assertEquals(least[0], missing(solution), "missing");
    assertEquals(least[1], solution.cost(), "cost");
    assertTrue(solution.isProved());
    if (least[0] == 0) {
      assertEquals(least[2], lengths(solution), "stock lengths");
      assertEquals(-least[3], longestRest(problem, solution), "longest rest");
    }
  }

  private static long lengths(CuttingSolution solution) {
    return solution.patterns().stream().mapToInt(CuttingSolution.Pattern::times).sum();
  }

  /** With the cut before it. */
  private static long longestRest(CuttingProblem problem, CuttingSolution solution) {
    long longest = 0;
    for (var pattern : solution.patterns()) {
      long pieces = 0;
      long length = 0;
      for (int i = 0; i < pattern.pieces().size(); i++) {
        pieces += pattern.pieces().get(i);
        length += pattern.pieces().get(i) * problem.demands().get(i).length();
      }
      longest =
          Math.max(longest, rest(problem, problem.stocks().get(pattern.stock()), pieces, length));
    }
    return longest;
  }

  private static long rest(
      CuttingProblem problem, CuttingProblem.Stock stock, long pieces, long length) {
    return stock.length() - problem.trim() + problem.kerf() - length - problem.kerf() * pieces;
  }

  private static long missing(CuttingSolution solution) {
    return solution.missing().stream().mapToInt(n -> n).sum();
  }

  /**
   * The longest piece first, into the first stock length begun with room for it, else into a new
   * one of those with the least price for their length; of stock lengths without a limit.
   */
  private static long firstFitDecreasing(CuttingProblem problem) {
    var lengths = new ArrayList<Long>();
    for (var demand : problem.demands()) {
      lengths.addAll(Collections.nCopies(demand.count(), demand.length()));
    }
    lengths.sort(Comparator.reverseOrder());
    var rests = new ArrayList<Long>();
    long cost = 0;
    for (long length : lengths) {
      long weight = length + problem.kerf();
      int at = 0;
      while (at < rests.size() && rests.get(at) < weight) {
        at++;
      }
      if (at == rests.size()) {
        var stock =
            problem.stocks().stream()
                .filter(s -> problem.fits(s, 1, length))
                .min(Comparator.comparingDouble(s -> (double) s.price() / s.length()))
                .orElseThrow();
        cost += stock.price();
        rests.add(rest(problem, stock, 0, 0));
      }
      rests.set(at, rests.get(at) - weight);
    }
    return cost;
  }

  /** Every way to put each piece on each board there is, or on none. */
  private static final class Exhaustive {
    private final CuttingProblem problem;
    private final List<CuttingProblem.Stock> boards = new ArrayList<>();
    private final List<Long> pieces = new ArrayList<>();
    private final long[] count;
    private final long[] length;

    /** Missing, cost, stock lengths and less the longest rest, in that order. */
    private long[] least = {Long.MAX_VALUE, 0, 0, 0};

    Exhaustive(CuttingProblem problem) {
      this.problem = problem;
      problem.demands().forEach(d -> pieces.addAll(Collections.nCopies(d.count(), d.length())));
      for (var stock : problem.stocks()) {
        boards.addAll(Collections.nCopies(stock.available().orElse(pieces.size()), stock));
      }
      this.count = new long[boards.size()];
      this.length = new long[boards.size()];
    }

    long[] least() {
      place(0, 0, 0, 0);
      return least;
    }

    private void place(int piece, long missing, long cost, long lengths) {
      long[] sure = {missing, cost, lengths, Long.MIN_VALUE};
      if (Arrays.compare(sure, least) >= 0) {
        return;
      }
      if (piece == pieces.size()) {
        sure[3] = -longestRest();
        least = Arrays.compare(sure, least) < 0 ? sure : least;
        return;
      }
      for (int b = 0; b < boards.size(); b++) {
        boolean likeTheOneBefore =
            b > 0 && count[b - 1] == 0 && boards.get(b - 1).equals(boards.get(b));
        if (!likeTheOneBefore
            && problem.fits(boards.get(b), count[b] + 1, length[b] + pieces.get(piece))) {
          long more = count[b] == 0 ? boards.get(b).price() : 0;
          count[b]++;
          length[b] += pieces.get(piece);
          place(piece + 1, missing, cost + more, lengths + (count[b] == 1 ? 1 : 0));
          count[b]--;
          length[b] -= pieces.get(piece);
        }
      }
      place(piece + 1, missing + 1, cost, lengths);
    }

    private long longestRest() {
      long longest = 0;
      for (int b = 0; b < count.length; b++) {
        if (count[b] > 0) {
          longest = Math.max(longest, rest(problem, boards.get(b), count[b], length[b]));
        }
      }
      return longest;
    }
  }

  @Provide
  Arbitrary<CuttingProblem> jobs() {
    return problems(6, 8, 4, false);
  }

  @Provide
  Arbitrary<CuttingProblem> small() {
    return problems(3, 2, 3, false);
  }

  @Provide
  Arbitrary<CuttingProblem> boughtOnly() {
    return problems(8, 10, 3, true);
  }

  private static Arbitrary<CuttingProblem> problems(
      int kinds, int count, int stocks, boolean unlimited) {
    var stock =
        Combinators.combine(
                Arbitraries.longs().between(80, 120),
                Arbitraries.longs().between(0, 12),
                Arbitraries.integers().between(-1, 3))
            .as(
                (length, price, available) ->
                    available < 0 || unlimited
                        ? new CuttingProblem.Stock(length, price + 1, OptionalInt.empty())
                        : new CuttingProblem.Stock(length, price, OptionalInt.of(available)));
    var lengths =
        Arbitraries.longs()
            .between(15, unlimited ? 75 : 110)
            .array(long[].class)
            .ofMinSize(1)
            .ofMaxSize(kinds);
    var counts = Arbitraries.integers().between(1, count).list().ofSize(kinds);
    return Combinators.combine(
            Arbitraries.longs().between(0, 3),
            Arbitraries.longs().between(0, 4),
            stock.list().ofMinSize(1).ofMaxSize(stocks),
            lengths,
            counts)
        .as(
            (kerf, trim, kept, wanted, times) -> {
              var demands = new ArrayList<CuttingProblem.Demand>();
              long[] distinct = Arrays.stream(wanted).distinct().toArray();
              for (int i = 0; i < distinct.length; i++) {
                demands.add(new CuttingProblem.Demand(distinct[i], times.get(i)));
              }
              return new CuttingProblem(kerf, trim, kept, demands);
            });
  }
}
