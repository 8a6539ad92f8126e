package org.slatwright.benchmarks.cuttingstock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;
import org.slatwright.design.cuttingstock.CuttingSolution;

class CuttingBenchmarkTest {

  private static final String ACADEMIC =
      """
      {"name":"a","capacity":10,"items":[{"length":6,"demand":2},{"length":4,"demand":1}],"optimum":2}
      """;
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
    Instance instance = InstanceReader.read("f", ACADEMIC.lines().toList()).get(0);
    CuttingSolution solution = new CuttingSolution(List.of(), List.of(0, 0), 3, 2);
    Measured measured =
        new Measured(instance, solution, 1.25, FirstFitDecreasing.cost(instance.problem()));
    assertEquals(
        "a                                     3          2      no        1.3    50.00          2",
        measured.line());
    assertEquals(
        """
        1 instances, 1 of known optimum
        proved 0, at the known optimum 0, worst 50.00 % over
        time: median 1.3 ms, 95th percentile 1.3 ms, longest 1.3 ms, warm
        first fit decreasing: at the known optimum 1, worst 0.00 % over
        """,
        new Summary(List.of(measured)).text());
  }
}
