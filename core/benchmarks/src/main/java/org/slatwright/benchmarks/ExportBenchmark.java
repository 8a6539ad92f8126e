package org.slatwright.benchmarks;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.rackfile.RackFileException;

/** From a plan to the bytes of one format, with its default options. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ExportBenchmark {

  /** What is written. */
  @Param public BenchmarkRack rack;

  /** How. */
  @Param({"csv", "dxf", "html", "json", "pdf", "png", "stl", "svg"})
  public String format;

  private Plan plan;
  private Exporter exporter;
  private OptionValues options;

  /** Has the plan and the exporter at hand. */
  @Setup
  public void prepare() throws RackFileException {
    plan = rack.plan();
    exporter = Shipped.exporter(format);
    options = OptionValues.defaults(exporter.options());
  }

  /** Every file, counted and thrown away; gives the number of bytes. */
  @Benchmark
  public long export() throws ExportException, IOException {
    CountingDestination destination = new CountingDestination();
    exporter.export(plan, options, destination);
    return destination.bytes();
  }
}
