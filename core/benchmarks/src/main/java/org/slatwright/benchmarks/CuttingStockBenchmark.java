package org.slatwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.slatwright.benchmarks.cuttingstock.InstanceFileException;
import org.slatwright.benchmarks.cuttingstock.ShippedInstances;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.cuttingstock.CuttingStock;
import org.slatwright.design.cuttingstock.Effort;

/** From a cutting problem to its plan, within the usual effort. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CuttingStockBenchmark {

  /** Which shipped instance: a job of a workshop, and one of Falkenauer's. */
  @Param({"ws-0106-workbench", "t249_00"})
  public String instance;

  private CuttingProblem problem;

  /** Has the problem at hand. */
  @Setup
  public void prepare() throws InstanceFileException {
    problem =
        ShippedInstances.all().stream()
            .filter(each -> each.name().equals(instance))
            .findFirst()
            .orElseThrow()
            .problem();
  }

  /** All the way. */
  @Benchmark
  public CuttingSolution solve() {
    return CuttingStock.solve(problem, Effort.USUAL);
  }
}
