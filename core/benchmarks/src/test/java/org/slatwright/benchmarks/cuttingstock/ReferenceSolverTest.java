package org.slatwright.benchmarks.cuttingstock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.design.cuttingstock.CuttingCheck;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.cuttingstock.CuttingStock;
import org.slatwright.design.cuttingstock.Effort;

/** Two solvers that know nothing of each other come to the same cost. */
class ReferenceSolverTest {

  private static final int SECONDS = 20;

  @Property(tries = 100)
  void ourPlansMissAndCostWhatTheReferencesDo(@ForAll("jobs") CuttingProblem problem) {
    CuttingSolution reference = ReferenceSolver.solve(problem, SECONDS).orElseThrow();
    assertEquals(List.of(), CuttingCheck.faults(problem, reference));
    assertTrue(reference.isProved());
    CuttingSolution ours = CuttingStock.solve(problem, Effort.USUAL);
    assertEquals(missing(reference), missing(ours));
    assertEquals(reference.cost(), ours.cost());
  }

  /** The kerf takes the room of a third 40, what is on hand is free, and only one 99 is there. */
  @Example
  void aJobThatCanBeDoneInTheHead() {
    CuttingProblem problem =
        new CuttingProblem(
            2,
            4,
            List.of(
                new Stock(125, 10, OptionalInt.empty()),
                new Stock(99, 4, OptionalInt.of(1)),
                new Stock(46, 0, OptionalInt.of(1))),
            List.of(new Demand(40, 6)));
    CuttingSolution reference = ReferenceSolver.solve(problem, SECONDS).orElseThrow();
    assertEquals(List.of(), CuttingCheck.faults(problem, reference));
    // two of 99, one of 46, and three are left for two of 125
    assertEquals(24, reference.cost());
    assertEquals(24, CuttingStock.solve(problem, Effort.USUAL).cost());
  }

  @Example
  void whatFitsNoStockIsMissing() {
    CuttingProblem problem =
        new CuttingProblem(
            0,
            0,
            List.of(new Stock(1000, 5, OptionalInt.of(1))),
            List.of(new Demand(1001, 2), new Demand(400, 3)));
    CuttingSolution reference = ReferenceSolver.solve(problem, SECONDS).orElseThrow();
    assertEquals(List.of(2, 1), reference.missing());
    assertEquals(5, reference.cost());
    assertTrue(reference.isProved());
  }

  @Example
  void tooManyPatternsAreNotTried() {
    List<Demand> demands = new ArrayList<>();
    for (int length = 50; length < 90; length++) {
      demands.add(new Demand(length, 9));
    }
    CuttingProblem problem =
        new CuttingProblem(0, 0, List.of(new Stock(1000, 1, OptionalInt.empty())), demands);
    assertEquals(Optional.empty(), ReferenceSolver.solve(problem, SECONDS));
  }

  private static int missing(CuttingSolution solution) {
    return solution.missing().stream().mapToInt(n -> n).sum();
  }

  /** Up to three kinds of piece from up to three stocks, bought, limited or on hand. */
  @Provide
  Arbitrary<CuttingProblem> jobs() {
    Arbitrary<Long> small = Arbitraries.longs().between(0, 4);
    return Combinators.combine(small, small, stocks(), demands()).as(CuttingProblem::new);
  }

  private static Arbitrary<List<Stock>> stocks() {
    Arbitrary<Long> length = Arbitraries.longs().between(60, 150);
    Arbitrary<Long> price = Arbitraries.longs().between(0, 20);
    Arbitrary<Integer> available = Arbitraries.integers().between(0, 4);
    return Combinators.combine(length, price, available.optional())
        .as((l, p, a) -> new Stock(l, p, a.map(OptionalInt::of).orElse(OptionalInt.empty())))
        .list()
        .ofMinSize(1)
        .ofMaxSize(3);
  }

  private static Arbitrary<List<Demand>> demands() {
    Arbitrary<Set<Long>> lengths =
        Arbitraries.longs().between(15, 130).set().ofMinSize(1).ofMaxSize(3);
    Arbitrary<List<Integer>> counts = Arbitraries.integers().between(1, 5).list().ofSize(3);
    return Combinators.combine(lengths, counts)
        .as(
            (each, times) -> {
              List<Demand> demands = new ArrayList<>();
              each.forEach(length -> demands.add(new Demand(length, times.get(demands.size()))));
              return demands;
            });
  }
}
