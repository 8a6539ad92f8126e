package org.slatwright.benchmarks;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.testkit.SamplePlans;

/** From drawings to a book of them, page after page. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class BookBenchmark {

  /** How many pages the book has: the sheets of the large rack, over and over. */
  @Param({"1", "10", "100"})
  public int pages;

  private Plan plan;
  private Exporter exporter;
  private OptionValues options;

  /** What was written, told beside the score a second: pages, and bytes. */
  @AuxCounters
  @State(Scope.Thread)
  public static class Written {
    /** Of all books. */
    public long pages;

    /** Of all books. */
    public long bytes;
  }

  /** Has the drawings and the exporter at hand. */
  @Setup
  public void prepare() throws RackFileException {
    Plan rack = BenchmarkRack.LARGE.plan();
    List<Sheet> some = rack.sheets();
    List<Sheet> sheets =
        IntStream.range(0, pages).mapToObj(page -> some.get(page % some.size())).toList();
    plan = SamplePlans.withDrawings(rack, sheets, Templates.NONE);
    exporter = Shipped.exporter("pdf");
    options = OptionValues.defaults(exporter.options());
  }

  /** The whole book, counted and thrown away; gives the number of bytes. */
  @Benchmark
  public long write(Written written) throws ExportException, IOException {
    CountingDestination destination = new CountingDestination();
    exporter.export(plan, options, destination);
    written.pages += pages;
    written.bytes += destination.bytes();
    return destination.bytes();
  }
}
