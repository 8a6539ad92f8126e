package org.slatwright.benchmarks.cuttingstock;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.cuttingstock.CuttingSolution.Pattern;

class CuttingBenchmarkTest {

  private static final String ACADEMIC =
      """
      {"name":"a","capacity":10,"items":[{"length":6,"demand":2},{"length":4,"demand":1}],"optimum":2}
      """;
  private static final List<Pattern> PATTERNS =
      List.of(new Pattern(0, List.of(1, 1), 1), new Pattern(0, List.of(0, 1), 1));
  private static final CuttingSolution PLAN = new CuttingSolution(PATTERNS, List.of(0, 0), 2, 2);
  private static final String WORKSHOP =
      """
      {"name":"w","kerf":1,"trim":2,"stock":[{"length":30,"price":5,"available":null},\
      {"length":9,"price":0,"available":2}],"items":[{"length":7,"demand":1}]}
      """;

  @Test
  void bothFormsAreRead() throws Exception {
    List<Instance> read = InstanceReader.read("f", (ACADEMIC + "\n" + WORKSHOP).lines().toList());
    assertEquals(List.of(new Stock(10, 1, OptionalInt.empty())), read.get(0).problem().stocks());
    assertEquals(List.of(new Demand(4, 1), new Demand(6, 2)), read.get(0).problem().demands());
    assertEquals(OptionalLong.of(2), read.get(0).optimum());
    assertEquals(new Stock(9, 0, OptionalInt.of(2)), read.get(1).problem().stocks().get(1));
    assertEquals(1, read.get(1).problem().kerf());
    assertEquals(2, read.get(1).problem().trim());
    assertEquals(OptionalLong.empty(), read.get(1).optimum());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"name\":\"a\",\"capacity\":0,\"items\":[]} | f:1: items must be a list with something in it",
        "{\"capacity\":1} | f:1: name must be a text",
        "{\"name\":\"a\",\"capacity\":9,\"items\":[{\"length\":1.5,\"demand\":1}]} | f:1: length is 1.5, must be a whole number from 1 to 1000000000000",
      })
  void aBadLineIsSaid(String line, String message) {
    InstanceFileException thrown =
        assertThrows(
            InstanceFileException.class,
            () -> InstanceReader.read("f", List.of(line.replace(":0,", ":5,"))));
    assertEquals(message, thrown.getMessage());
  }

  @Test
  void aLineAndTheSummaryReadSo() throws Exception {
    Measured measured = measured(new CuttingSolution(PATTERNS, List.of(0, 0), 2, 1), 1.25);
    assertEquals(
        """
        name                               cost      bound  proved         ms   over %   plan  first fit
        a                                     2          1      no        1.3     0.00  right          2
        """,
        Measured.header(false) + "\n" + measured.line() + "\n");
    assertEquals(
        """
        1 instances, 1 of known optimum
        plans checked anew: 1 right, 0 wrong
        proved 0, at the known optimum 1, worst 0.00 % or 0.00 stock lengths over
        time: median 1.3 ms, 95th percentile 1.3 ms, longest 1.3 ms, warm
        first fit decreasing: at the known optimum 1, worst 0.00 % or 0.00 stock lengths over
        """,
        new Summary(List.of(measured)).text());
  }

  @Test
  void aWrongPlanIsToldAndCounted() throws Exception {
    Measured measured = measured(new CuttingSolution(List.of(), List.of(0, 0), 3, 3), 20);
    assertEquals(
        "a                                     3          3     yes       20.0    50.00  WRONG"
            + "          2  wrong: demand 0: 0 cut and 0 missing of 1;"
            + " wrong: demand 1: 0 cut and 0 missing of 2; wrong: the cost is 0, not 3;"
            + " wrong: the bound 3 is above 0; wrong: the bound is above the known optimum 2",
        measured.line());
    Summary summary = new Summary(List.of(measured, measured(PLAN, 1)));
    assertFalse(summary.allRight());
    assertEquals(
        """
        plans checked anew: 1 right, 1 wrong
        proved 2, at the known optimum 1, worst 50.00 % or 1.00 stock lengths over
        time: median 1.0 ms, 95th percentile 20.0 ms, longest 20.0 ms, warm
        """,
        summary.text().lines().skip(1).limit(3).collect(joining("\n", "", "\n")));
  }

  @Test
  void theReferenceStandsBesideOurs() throws Exception {
    Instance instance = instance();
    Measured measured =
        new Measured(
            new Attempt(instance, Optional.of(PLAN), 1),
            OptionalLong.of(2),
            Optional.of(
                new Attempt(
                    instance,
                    Optional.of(new CuttingSolution(PATTERNS, List.of(0, 0), 1, 1)),
                    2_000)));
    assertEquals(
        """
        name                               cost      bound  proved         ms   over %   plan  first fit |  reference  proved         ms   plan
        a                                     2          2     yes        1.0     0.00  right          2 |          1     yes     2000.0  WRONG  reference: the cost is 2, not 1; reference: costs less than the known optimum 2
        """,
        Measured.header(true) + "\n" + measured.line() + "\n");
    Summary summary = new Summary(List.of(measured));
    assertTrue(summary.allRight(), "a wrong plan of the reference's is not ours");
    assertEquals(
        """
        reference solver: 1 of 1 planned, 1 wrong, called proved 1, at the known optimum 0
        time: median 2000.0 ms, 95th percentile 2000.0 ms, longest 2000.0 ms, warm
        """,
        summary.text().lines().skip(5).collect(joining("\n", "", "\n")));
  }

  @Test
  void itRunsOnAFileAndEndsWithTheStatusPromised(@TempDir Path folder) throws Exception {
    String file = Files.writeString(folder.resolve("a.jsonl"), ACADEMIC).toString();
    String told = run(0, "--reference", "1", file);
    assertTrue(told.contains("plans checked anew: 1 right, 0 wrong"), told);
    assertTrue(told.contains("reference solver: 1 of 1 planned, 0 wrong, called proved 1"), told);
    String wrong =
        Files.writeString(folder.resolve("b.jsonl"), ACADEMIC.replace(":2}\n", ":3}\n")).toString();
    assertTrue(run(1, wrong).contains("wrong: costs less than the known optimum 3"));
    run(2, folder.resolve("none.jsonl").toString());
    run(2, "--reference", "0", file);
    run(2, "--reference");
  }

  private static String run(int status, String... arguments) {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(told, true, StandardCharsets.UTF_8);
    assertEquals(status, CuttingBenchmark.run(List.of(arguments), out, out));
    return told.toString(StandardCharsets.UTF_8);
  }

  private static Instance instance() throws InstanceFileException {
    return InstanceReader.read("f", ACADEMIC.lines().toList()).get(0);
  }

  private static Measured measured(CuttingSolution solution, double millis)
      throws InstanceFileException {
    Attempt ours = new Attempt(instance(), Optional.of(solution), millis);
    return new Measured(ours, FirstFitDecreasing.cost(instance().problem()), Optional.empty());
  }
}
