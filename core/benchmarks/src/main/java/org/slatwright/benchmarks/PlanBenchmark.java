package org.slatwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** From the bytes of a rack file to its plan. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PlanBenchmark {

  /** What is planned. */
  @Param public BenchmarkRack rack;

  private byte[] rackFile;

  /** Has the rack file at hand. */
  @Setup
  public void prepare() {
    rackFile = rack.rackFile();
  }

  /** The rack file alone. */
  @Benchmark
  public RackFile read() throws RackFileException {
    return RackFileReader.read(rackFile, "rack.yaml", List.of());
  }

  /** All the way. */
  @Benchmark
  public Plan plan() throws RackFileException {
    return Planner.plan(read());
  }
}
