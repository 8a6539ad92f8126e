package org.slatwright.benchmarks.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.slatwright.design.cuttingstock.CuttingCheck;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingSolution;

/**
 * What one solver made of one instance.
 *
 * @param instance what was solved
 * @param solution its plan, where it found any
 * @param millis how long that took
 */
record Attempt(Instance instance, Optional<CuttingSolution> solution, double millis) {

  /** Lets a solver try. */
  static Attempt of(Instance instance, Function<CuttingProblem, Optional<CuttingSolution>> solver) {
    long start = System.nanoTime();
    Optional<CuttingSolution> solution = solver.apply(instance.problem());
    return new Attempt(instance, solution, (System.nanoTime() - start) / 1e6);
  }

  /** How many pieces it found no stock for. */
  int missing() {
    return solution.stream().flatMap(s -> s.missing().stream()).mapToInt(n -> n).sum();
  }

  /** Whether the solver says that no plan costs less. */
  boolean isProved() {
    return solution.isPresent() && solution.get().isProved();
  }

  /** Whether there is a right plan that costs the known optimum. */
  boolean isAtOptimum() {
    return solution.isPresent()
        && instance.optimum().isPresent()
        && solution.get().cost() == instance.optimum().getAsLong()
        && missing() == 0
        && faults().isEmpty();
  }

  /** What is wrong with the plan, or with what is claimed of it; nothing without a plan. */
  List<String> faults() {
    List<String> faults = new ArrayList<>();
    solution.ifPresent(plan -> faults.addAll(CuttingCheck.faults(instance.problem(), plan)));
    if (instance.optimum().isPresent() && missing() == 0) {
      long optimum = instance.optimum().getAsLong();
      solution.stream()
          .filter(plan -> plan.cost() < optimum)
          .forEach(plan -> faults.add("costs less than the known optimum " + optimum));
      solution.stream()
          .filter(plan -> plan.lowerBound() > optimum)
          .forEach(plan -> faults.add("the bound is above the known optimum " + optimum));
    }
    return faults;
  }
}
