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
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.cutting.Cutting;
import org.slatwright.design.drafting.Drafting;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.jig.JigMaker;
import org.slatwright.design.jig.MadeJig;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Sizing;
import org.slatwright.design.steps.BuildOrder;
import org.slatwright.design.takeoff.TakeOff;

/** The sheets of racks with more and more pieces, all else settled before. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DraftingBenchmark {

  private static final int SLATS = 5;

  /** Shelves and bays, five slats to each: 26, 101, 278, 1034 and 2006 pieces. */
  @Param({"2 x 1", "5 x 2", "10 x 3", "20 x 6", "20 x 12"})
  public String size;

  private Rack rack;
  private Assembly assembly;
  private Quantities quantities;
  private MadeJig jig;
  private CuttingPlan cutting;
  private OrderOfWork work;

  /** Settles all that is drawn. */
  @Setup
  public void prepare() throws RackFileException {
    String[] counts = size.split(" x ");
    byte[] rackFile =
        BenchmarkRack.rackFile(
            Integer.parseInt(counts[0]), Integer.parseInt(counts[1]), SLATS, "per-bay");
    rack = Sizing.solve(RackFileReader.read(rackFile, "rack.yaml", List.of()));
    assembly = Framing.frame(rack);
    quantities = TakeOff.of(assembly, rack);
    jig = JigMaker.make(rack);
    cutting = Cutting.plan(rack, assembly, quantities).plan();
    work = BuildOrder.of(rack, assembly, quantities, jig, cutting);
  }

  /** All sheets. */
  @Benchmark
  public List<Sheet> sheets() {
    return Drafting.sheets(rack, assembly, quantities, jig, cutting, work, List.of());
  }
}
