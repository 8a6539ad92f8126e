package org.slatwright.exporter.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Part;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

/** What Python's csv module reads of boards, cuts and prices is what the plan says. */
class CuttingReadBackTest {

  @TempDir Path folder;

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void everyPieceIsFoundOnItsBoard(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = rows(way, "piece", "spare");
    List<CutBoard> boards = boards(way.plan());
    assertEquals(boards.stream().mapToInt(board -> board.cuts().size()).sum(), rows.size());
    int next = 0;
    for (CutBoard board : boards) {
      for (int i = 0; i < board.cuts().size(); i++) {
        CutBoard.Cut cut = board.cuts().get(i);
        Map<String, String> row = rows.get(next++);
        assertBoard(way, board, row);
        assertEquals(
            List.of(i + 1 + "", cut.mark(), cut.spare() ? "spare" : "piece"),
            List.of(row.get("order"), row.get("mark"), row.get("kind")));
        assertPlace(way, row, cut.from(), cut.length(), cut.across(), cut.width());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void whatIsLeftOrToBeAvoidedIsFoundOnItsBoard(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> offcuts = rows(way, "offcut");
    List<Map<String, String>> avoided = rows(way, "avoid");
    int offcut = 0;
    int avoid = 0;
    for (CutBoard board : boards(way.plan())) {
      for (CutBoard.Offcut left : board.offcuts()) {
        Map<String, String> row = offcuts.get(offcut++);
        assertBoard(way, board, row);
        assertPlace(way, row, left.from(), left.length(), left.across(), left.width());
        assertEquals(left.keep(), row.get("note").startsWith("keep"));
        assertTrue(row.get("note").endsWith(left.gives()), row::toString);
      }
      for (CutBoard.Stretch stretch : board.avoid()) {
        Map<String, String> row = avoided.get(avoid++);
        assertBoard(way, board, row);
        Length length = stretch.to().minus(stretch.from());
        assertPlace(way, row, stretch.from(), length, Length.ZERO, board.width());
      }
    }
    assertEquals(List.of(offcut, avoid), List.of(offcuts.size(), avoided.size()));
  }

  /** Pieces on all boards alike, and those that are missing, are the pieces of the rack. */
  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theBoardsGiveThePiecesOfTheRack(Way way) throws IOException, InterruptedException {
    Map<String, Integer> given = new HashMap<>();
    for (Map<String, String> row : rows(way, "piece")) {
      given.merge(row.get("mark"), Integer.valueOf(row.get("boards alike")), Integer::sum);
    }
    for (Map<String, String> row : way.read("missing-pieces.csv", folder)) {
      given.merge(row.get("mark"), Integer.valueOf(row.get("count")), Integer::sum);
    }
    for (Map.Entry<String, Integer> mark : given.entrySet()) {
      assertEquals(part(way.plan(), mark.getKey()).quantity(), mark.getValue(), mark.getKey());
    }
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theStopSettingsAreInSequence(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = way.read("stop-settings.csv", folder);
    int next = 0;
    int step = 0;
    for (TimberCuts timber : way.plan().cutting().timbers()) {
      for (StopSetting setting : timber.settings()) {
        step++;
        for (StopSetting.Work work : setting.works()) {
          Map<String, String> row = rows.get(next++);
          assertEquals(
              List.of(step + "", timber.timber(), work.board(), work.piece(), work.count() + ""),
              values(row, "step", "timber", "board", "piece", "count"));
          way.assertLength(setting.length(), row, "setting");
        }
      }
    }
    assertEquals(next, rows.size());
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theBuyingListIsThatOfThePlan(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = way.read("buying-list.csv", folder);
    List<Purchase> buying = way.plan().cutting().buying();
    for (int i = 0; i < buying.size(); i++) {
      Purchase purchase = buying.get(i);
      Map<String, String> row = rows.get(i);
      assertEquals(
          List.of(
              purchase.quantity().map(String::valueOf).orElse(""),
              money(purchase.price()),
              money(purchase.cost())),
          values(row, "quantity", "price", "cost"));
      assertTrue(row.get("what").endsWith(purchase.what()), row::toString);
      assertTrue(row.get("note").endsWith(purchase.note()), row::toString);
      if (purchase.length().isPresent()) {
        way.assertLength(purchase.length().get(), row, "length");
      }
    }
    assertEquals(
        way.plan().cutting().cost().stream().map(BigDecimal::toPlainString).toList(),
        rows.stream().skip(buying.size()).map(row -> row.get("cost")).toList());
  }

  /** As a spreadsheet would: the last row of a column is the sum of those above it. */
  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theCostsAddUpToTheTotal(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = way.read("buying-list.csv", folder);
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal total = BigDecimal.ZERO;
    for (Map<String, String> row : rows) {
      BigDecimal cost = row.get("cost").isEmpty() ? BigDecimal.ZERO : decimal(row, "cost");
      if (row.get("what").equals("total")) {
        total = cost;
      } else {
        sum = sum.add(cost);
      }
      if (!row.get("price").isEmpty()) {
        assertEquals(0, cost.compareTo(decimal(row, "price").multiply(decimal(row, "quantity"))));
      }
    }
    assertEquals(0, sum.compareTo(total), rows::toString);
  }

  @Test
  void sparePiecesMissingPiecesAndSlatsAreTold() throws IOException, InterruptedException {
    Plan plan = SamplePlans.everyKind();
    Way way = new Way(plan, "decimal");
    SparePiece spare = plan.cutting().spares().get(0);
    assertEquals(
        List.of(List.of("X1", spare.name(), spare.use(), "slat stock", "60", "2", "1")),
        cells(way, "spare-pieces.csv"));
    MissingPieces missing = plan.cutting().timbers().get(2).missing().get(0);
    assertEquals(
        List.of(
            List.of(
                missing.mark(), "slat", "1", "100", "60", "16", "norway spruce, reclaimed boards")),
        cells(way, "missing-pieces.csv"));
    ShelfSlats shelf = plan.cutting().shelves().get(0);
    assertEquals(
        IntStream.rangeClosed(1, 2)
            .mapToObj(i -> List.of("1", "1", i + "", shelf.marks().get(i - 1), "10", "no"))
            .toList(),
        cells(way, "shelf-slats.csv"));
  }

  @Test
  void aCutIsOneRow() throws IOException, InterruptedException {
    assertEquals(
        List.of(
            List.of("F1", "1", "2400", "piece", "1", "U", "10", "600", ""),
            List.of("F1", "1", "2400", "piece", "2", "U", "613.2", "600", ""),
            List.of("F1", "1", "2400", "piece", "3", "R", "1216.4", "320", ""),
            List.of("F1", "1", "2400", "piece", "4", "R", "1539.6", "320", ""),
            List.of("F1", "1", "2400", "offcut", "", "", "1862.8", "537.2", "keep; gives 1 rail"),
            List.of("F2 F3", "2", "650", "piece", "1", "U", "10", "600", ""),
            List.of("F2 F3", "2", "650", "offcut", "", "", "613.2", "36.8", "")),
        new Way(WareRack.inMillimetres(), "decimal")
            .read("cutting-plan.csv", folder).stream()
                .limit(7)
                .map(
                    row ->
                        values(
                            row,
                            "boards",
                            "boards alike",
                            "board length (mm)",
                            "kind",
                            "order",
                            "mark",
                            "from (mm)",
                            "length (mm)",
                            "note"))
                .toList());
  }

  @Test
  void theTimberToBuyIsAQuantity() throws IOException, InterruptedException {
    // 2.4 m of 44 × 44 mm and of 95 × 18 mm; 8 ft of 1 3/4 × 1 3/4 in and of 3 1/2 × 3/4 in
    assertEquals(List.of("0.0088", "m³"), timberToBuy(WareRack.inMillimetres()));
    assertEquals(List.of("3.79", "board feet"), timberToBuy(WareRack.inInches()));
  }

  @Test
  void whereNothingIsCutThereAreNoTablesOfIt() throws IOException {
    Plan bare = SamplePlans.bare(SamplePlans.everyKind());
    var names = Written.plan(bare, "decimal").names();
    for (String table :
        List.of(
            Plan.BUYING_LIST,
            Plan.CUTTING_PLAN,
            Plan.STOP_SETTINGS,
            Plan.SPARE_PIECES,
            Plan.MISSING_PIECES,
            Plan.SHELF_SLATS)) {
      assertFalse(names.contains(table + ".csv"), table);
    }
  }

  private List<String> timberToBuy(Plan plan) throws IOException, InterruptedException {
    return new Way(plan, "decimal")
        .read("quantities.csv", folder).stream()
            .filter(row -> row.get("quantity").equals("timber to buy"))
            .map(row -> values(row, "value", "unit"))
            .findFirst()
            .orElseThrow();
  }

  private List<Map<String, String>> rows(Way way, String... kinds)
      throws IOException, InterruptedException {
    return way.read("cutting-plan.csv", folder).stream()
        .filter(row -> List.of(kinds).contains(row.get("kind")))
        .toList();
  }

  private List<List<String>> cells(Way way, String table) throws IOException, InterruptedException {
    return way.read(table, folder).stream()
        .map(row -> (List<String>) new ArrayList<>(row.values()))
        .toList();
  }

  private static List<CutBoard> boards(Plan plan) {
    return plan.cutting().timbers().stream().flatMap(timber -> timber.boards().stream()).toList();
  }

  private static Part part(Plan plan, String mark) {
    return plan.assembly().parts().stream()
        .filter(part -> part.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private static void assertBoard(Way way, CutBoard board, Map<String, String> row) {
    assertEquals(
        List.of(String.join(" ", board.marks()), board.marks().size() + "", board.source().word()),
        values(row, "boards", "boards alike", "source"));
    way.assertLength(board.length(), row, "board length");
    way.assertLength(board.width(), row, "board width");
    way.assertLength(board.thickness(), row, "board thickness");
  }

  private static void assertPlace(
      Way way, Map<String, String> row, Length from, Length length, Length across, Length width) {
    way.assertLength(from, row, "from");
    way.assertLength(length, row, "length");
    way.assertLength(across, row, "across");
    way.assertLength(width, row, "width");
  }

  private static List<String> values(Map<String, String> row, String... columns) {
    return Stream.of(columns).map(row::get).toList();
  }

  private static String money(Optional<BigDecimal> amount) {
    return amount.map(BigDecimal::toPlainString).orElse("");
  }

  private static BigDecimal decimal(Map<String, String> row, String column) {
    return new BigDecimal(row.get(column));
  }
}
