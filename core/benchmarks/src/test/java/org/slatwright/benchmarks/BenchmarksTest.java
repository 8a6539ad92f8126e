package org.slatwright.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.openjdk.jmh.annotations.Param;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Plan;

/** Every benchmark runs; none is timed here. */
class BenchmarksTest {

  @ParameterizedTest
  @EnumSource
  void planningRunsOnTheRackThatItNames(BenchmarkRack rack) throws Exception {
    PlanBenchmark benchmark = new PlanBenchmark();
    benchmark.rack = rack;
    benchmark.prepare();
    Plan plan = benchmark.plan();
    assertEquals("Propagation rack", benchmark.read().title().value());
    assertEquals(rack.slats(), plan.assembly().pieces(Role.SLAT).size());
    assertEquals(
        rack.shelves(),
        plan.assembly().groups().stream().filter(g -> g.kind() == Group.Kind.SHELF).count());
  }

  @ParameterizedTest
  @MethodSource("everyExport")
  void everyExportWritesSomething(BenchmarkRack rack, String format) throws Exception {
    ExportBenchmark benchmark = new ExportBenchmark();
    benchmark.rack = rack;
    benchmark.format = format;
    benchmark.prepare();
    assertTrue(benchmark.export() > 0);
  }

  @ParameterizedTest
  @MethodSource("measuredInstances")
  void cuttingRunsOnTheInstanceThatItNames(String instance) throws Exception {
    CuttingStockBenchmark benchmark = new CuttingStockBenchmark();
    benchmark.instance = instance;
    benchmark.prepare();
    assertTrue(benchmark.solve().isProved());
  }

  static String[] measuredInstances() throws NoSuchFieldException {
    return CuttingStockBenchmark.class.getField("instance").getAnnotation(Param.class).value();
  }

  @Test
  void aBookHasAsManyPagesAsItSays() throws Exception {
    BookBenchmark benchmark = new BookBenchmark();
    benchmark.pages = 12;
    benchmark.prepare();
    BookBenchmark.Written written = new BookBenchmark.Written();
    assertTrue(benchmark.write(written) > 0);
    assertEquals(12, written.pages);
    assertTrue(written.bytes > 0);
  }

  static Stream<Arguments> everyExport() throws NoSuchFieldException {
    return measuredFormats().stream()
        .flatMap(
            format -> Stream.of(BenchmarkRack.values()).map(rack -> Arguments.of(rack, format)));
  }

  @Test
  void everyFormatThatShipsIsMeasured() throws NoSuchFieldException {
    List<String> shipped = new ArrayList<>();
    ServiceLoader.load(Exporter.class).forEach(exporter -> shipped.add(exporter.format()));
    assertEquals(
        new TreeSet<>(shipped),
        new TreeSet<>(measuredFormats()),
        "the formats listed in ExportBenchmark");
  }

  private static List<String> measuredFormats() throws NoSuchFieldException {
    return List.of(ExportBenchmark.class.getField("format").getAnnotation(Param.class).value());
  }
}
