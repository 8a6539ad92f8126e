package org.slatwright.design.cuttingstock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;
import org.slatwright.design.cuttingstock.CuttingSolution.Pattern;

/** Each way for a plan to be wrong is told, and a right one has no fault. */
class CuttingCheckTest {

  /** What is cut below fills its stock lengths: 40 + 2 + 40 + 2 + 16 = 102 - 2, and so on. */
  private static final CuttingProblem PROBLEM =
      new CuttingProblem(
          2,
          2,
          List.of(
              new Stock(102, 9, OptionalInt.of(2)),
              new Stock(60, 5, OptionalInt.empty()),
              new Stock(59, 0, OptionalInt.of(1))),
          List.of(new Demand(40, 5), new Demand(16, 3)));

  private static final Pattern THREE = new Pattern(0, List.of(2, 1), 2);
  private static final Pattern TWO = new Pattern(1, List.of(1, 1), 1);

  @Test
  void aRightPlanHasNoFault() {
    assertFaults(List.of(), plan(23, THREE, TWO));
    assertFaults(List.of(), new CuttingSolution(List.of(THREE, TWO), List.of(0, 0), 23, 23));
  }

  @Test
  void aPieceLostOrDoubledIsTold() {
    assertFaults(
        List.of("demand 0: 4 cut and 0 missing of 5", "demand 1: 2 cut and 0 missing of 3"),
        plan(18, THREE));
    assertFaults(
        List.of("demand 0: 6 cut and 0 missing of 5"),
        plan(23, THREE, TWO, new Pattern(2, List.of(1, 0), 1)));
  }

  @Test
  void aStockLengthOverFilledByOneIsTold() {
    assertFaults(
        List.of("pattern 1 is over-filled"), plan(18, THREE, new Pattern(2, List.of(1, 1), 1)));
  }

  @Test
  void moreThanThereAreIsTold() {
    assertFaults(
        List.of("stock 0: 3 cut, 1 more than there are"),
        plan(27, THREE, new Pattern(0, List.of(1, 1), 1)));
  }

  @Test
  void whatIsMissingThoughStockIsLeftIsTold() {
    assertFaults(
        List.of(
            "demand 1 is missing, stock 1 would hold it",
            "demand 1 is missing, stock 2 would hold it"),
        new CuttingSolution(
            List.of(THREE, new Pattern(1, List.of(1, 0), 1)), List.of(0, 1), 23, 23));
  }

  @Test
  void whatIsNoPatternIsTold() {
    assertFaults(
        List.of("pattern 2 is empty"), plan(23, THREE, TWO, new Pattern(2, List.of(0, 0), 1)));
    assertFaults(
        List.of("pattern 2 is cut 0 times"),
        plan(23, THREE, TWO, new Pattern(2, List.of(1, 0), 0)));
    assertFaults(
        List.of(
            "pattern 1 holds -1 pieces of demand 1",
            "pattern 1 is empty",
            "demand 1: 1 cut and 0 missing of 3"),
        plan(23, THREE, new Pattern(1, List.of(1, -1), 1)));
  }

  @Test
  void aWrongCostAndABoundAboveItAreTold() {
    assertFaults(List.of("the cost is 23, not 22"), plan(22, THREE, TWO));
    assertFaults(
        List.of("the bound 24 is above 23"),
        new CuttingSolution(List.of(THREE, TWO), List.of(0, 0), 23, 24));
  }

  private static CuttingSolution plan(long cost, Pattern... patterns) {
    return new CuttingSolution(List.of(patterns), List.of(0, 0), cost, 0);
  }

  private static void assertFaults(List<String> expected, CuttingSolution plan) {
    assertEquals(expected, CuttingCheck.faults(PROBLEM, plan));
  }
}
