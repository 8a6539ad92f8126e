package org.slatwright.benchmarks.cuttingstock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.cuttingstock.CuttingStock;
import org.slatwright.design.cuttingstock.Effort;

/**
 * The instances that ship are all there and are what they are called. The workshop jobs are solved
 * by the solver's own tests.
 */
class ShippedInstancesTest {

  @Test
  void allAreThereAndHaveAnOptimumAndANameOfTheirOwn() throws Exception {
    assertEquals(20, ShippedInstances.of(ShippedInstances.WORKSHOP).size());
    assertEquals(21, falkenauers().size());
    Set<String> names = new HashSet<>();
    for (Instance instance : ShippedInstances.all()) {
      assertTrue(names.add(instance.name()), instance.name());
      assertTrue(instance.optimum().isPresent(), instance.name());
    }
    assertEquals(41, names.size());
  }

  /**
   * As Falkenauer, Journal of Heuristics 2 (1996), describes his classes: u of so many pieces of 20
   * to 100, to be cut from 150; t of so many of 250 to 499, in tenths 25.0 to 49.9, that three by
   * three fill 100.0, so that a third of their number is the optimum.
   */
  @ParameterizedTest
  @MethodSource("falkenauers")
  void falkenauersAreOfTheClassThatTheirNameSays(Instance instance) {
    boolean triplets = instance.name().startsWith("t");
    CuttingProblem problem = instance.problem();
    assertEquals(triplets ? 1000 : 150, problem.stocks().get(0).length());
    assertEquals(named(instance), problem.demands().stream().mapToInt(Demand::count).sum());
    for (Demand demand : problem.demands()) {
      assertTrue(demand.length() >= (triplets ? 250 : 20), demand::toString);
      assertTrue(demand.length() <= (triplets ? 499 : 100), demand::toString);
    }
    if (triplets) {
      assertEquals(named(instance) / 3, instance.optimum().getAsLong());
      assertEquals(1000L * named(instance) / 3, total(problem));
    }
  }

  @ParameterizedTest
  @MethodSource("falkenauers")
  void falkenauersAreCutAtThePublishedOptimumAndThatIsProved(Instance instance) {
    CuttingSolution solution = CuttingStock.solve(instance.problem(), Effort.USUAL);
    assertEquals(instance.optimum().getAsLong(), solution.cost());
    assertTrue(solution.isProved());
    assertEquals(List.of(), new Attempt(instance, Optional.of(solution), 0).faults());
  }

  static List<Instance> falkenauers() throws InstanceFileException {
    return ShippedInstances.of(ShippedInstances.FALKENAUER);
  }

  /** The pieces that the name promises: 120 of t120_01. */
  private static int named(Instance instance) {
    return Integer.parseInt(instance.name().substring(1, instance.name().indexOf('_')));
  }

  private static long total(CuttingProblem problem) {
    return problem.demands().stream().mapToLong(d -> d.length() * d.count()).sum();
  }
}
