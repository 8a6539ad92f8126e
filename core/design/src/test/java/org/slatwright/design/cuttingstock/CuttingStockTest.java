package org.slatwright.design.cuttingstock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CuttingStockTest {

  private static final Pattern STOCK =
      Pattern.compile("\\{\"length\":(\\d+),\"price\":(\\d+),\"available\":(null|\\d+)}");
  private static final Pattern DEMAND = Pattern.compile("\\{\"length\":(\\d+),\"demand\":(\\d+)}");

  /** Made for this project; each optimum was proved with OR-Tools, SCIP and HiGHS. */
  static Stream<String> workshopJobs() throws IOException {
    try (var in = CuttingStockTest.class.getResourceAsStream("workshop.jsonl")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines();
    }
  }

  @ParameterizedTest
  @MethodSource("workshopJobs")
  void workshopJobsAreCutAtLeastCostAndThatIsProved(String line) {
    var stocks = new ArrayList<CuttingProblem.Stock>();
    for (var m = STOCK.matcher(line); m.find(); ) {
      var available =
          m.group(3).equals("null")
              ? OptionalInt.empty()
              : OptionalInt.of(Integer.parseInt(m.group(3)));
      stocks.add(
          new CuttingProblem.Stock(
              Long.parseLong(m.group(1)), Long.parseLong(m.group(2)), available));
    }
    var demands = new ArrayList<CuttingProblem.Demand>();
    for (var m = DEMAND.matcher(line); m.find(); ) {
      demands.add(
          new CuttingProblem.Demand(Long.parseLong(m.group(1)), Integer.parseInt(m.group(2))));
    }
    var problem = new CuttingProblem(number(line, "kerf"), number(line, "trim"), stocks, demands);

    var solution = CuttingStock.solve(problem, Effort.USUAL);

    assertEquals(List.of(), CuttingCheck.faults(problem, solution));
    assertEquals(number(line, "optimum_cost"), solution.cost());
    assertTrue(solution.isProved());
  }

  private static long number(String line, String field) {
    var m = Pattern.compile("\"" + field + "\":(\\d+)").matcher(line);
    assertTrue(m.find(), field);
    return Long.parseLong(m.group(1));
  }

  @Test
  void theLastPieceNeedsNoCutWhereItEndsWithItsStock() {
    // 4 x 5976 + 3 x 32 = 24000
    assertEquals(1, boards(24_000));
    assertEquals(2, boards(23_999));
  }

  private static long boards(long length) {
    return CuttingStock.solve(
            new CuttingProblem(
                32,
                0,
                List.of(new CuttingProblem.Stock(length, 1, OptionalInt.empty())),
                List.of(new CuttingProblem.Demand(5976, 4))),
            Effort.USUAL)
        .cost();
  }

  /** The paper mill of the textbooks, 5600 mm rolls; 73 rolls. From memory. */
  @Test
  void thePaperMillCutsSeventyThreeRolls() {
    int[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
    int[] counts = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
    var demands = new ArrayList<CuttingProblem.Demand>();
    for (int i = 0; i < widths.length; i++) {
      demands.add(new CuttingProblem.Demand(widths[i], counts[i]));
    }
    var rolls = List.of(new CuttingProblem.Stock(5600, 1, OptionalInt.empty()));

    var solution = CuttingStock.solve(new CuttingProblem(0, 0, rolls, demands), Effort.USUAL);

    assertEquals(73, solution.cost());
    assertTrue(solution.isProved());
  }

  @Test
  void sixHundredSlatsInNanometresAreCutAtOnce() {
    var stocks =
        List.of(
            new CuttingProblem.Stock(2_438_400_000L, 1_190, OptionalInt.empty()),
            new CuttingProblem.Stock(3_657_600_000L, 1_790, OptionalInt.empty()),
            new CuttingProblem.Stock(912_812_500L, 0, OptionalInt.of(3)));
    var demands =
        List.of(
            new CuttingProblem.Demand(611_187_500L, 300),
            new CuttingProblem.Demand(457_200_000L, 300),
            new CuttingProblem.Demand(1_371_600_000L, 14));
    var problem = new CuttingProblem(3_175_000, 12_700_000, stocks, demands);

    var solution = CuttingStock.solve(problem, Effort.ofMilliseconds(200));

    assertEquals(List.of(), CuttingCheck.faults(problem, solution));
    assertTrue(solution.cost() - solution.lowerBound() <= 1_790, solution.lowerBound() + "");
  }

  /**
   * Five hundred pieces a sixth to a half of the stock, some 250 lengths, as Scholl's second set.
   */
  @Test
  void fiveHundredPiecesOfManyLengthsAreCutAtMostOneStockLengthOverTheLeast() {
    var random = new Random(1);
    var counts = new TreeMap<Long, Integer>();
    for (int n = 0; n < 500; n++) {
      counts.merge(167 + random.nextLong(333), 1, Integer::sum);
    }
    var demands = new ArrayList<CuttingProblem.Demand>();
    counts.forEach((length, count) -> demands.add(new CuttingProblem.Demand(length, count)));
    var stocks = List.of(new CuttingProblem.Stock(1000, 1, OptionalInt.empty()));
    var problem = new CuttingProblem(0, 0, stocks, demands);

    var solution = CuttingStock.solve(problem, Effort.USUAL);

    assertEquals(List.of(), CuttingCheck.faults(problem, solution));
    assertTrue(solution.cost() <= solution.lowerBound() + 1, solution.cost() + "");
  }

  @Test
  void whatFitsNoStockIsMissing() {
    var stocks = List.of(new CuttingProblem.Stock(1000, 5, OptionalInt.of(1)));
    var demands = List.of(new CuttingProblem.Demand(1001, 2), new CuttingProblem.Demand(400, 3));

    var solution = CuttingStock.solve(new CuttingProblem(0, 0, stocks, demands), Effort.USUAL);

    assertEquals(List.of(2, 1), solution.missing());
    assertEquals(5, solution.cost());
  }
}
