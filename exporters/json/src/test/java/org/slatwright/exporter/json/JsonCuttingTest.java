package org.slatwright.exporter.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.testkit.WareRack;
import tools.jackson.databind.JsonNode;

/** Whoever has the file alone can buy and cut, to the last digit and cent. */
class JsonCuttingTest {

  static Stream<Plan> plans() {
    return Written.anyPlan();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theCuttingPlanIsReadBackWhole(Plan plan) throws IOException, ExportException {
    assertEquals(plan.cutting(), cutting(Written.plan(plan).get("cutting")));
  }

  @Test
  void aPriceKeepsItsDigits() throws IOException, ExportException {
    String json = Written.files(WareRack.inMillimetres()).text("plan.json");
    assertTrue(json.contains("\"price\": 5.90,"), json);
    assertTrue(json.contains("\"price\": 4.4,"), json);
    assertTrue(json.contains("\"cost\": 10.30,"), json);
  }

  private static CuttingPlan cutting(JsonNode cutting) {
    return new CuttingPlan(
        each(cutting, "timbers", JsonCuttingTest::timber),
        each(cutting, "shelves", JsonCuttingTest::shelf),
        each(cutting, "spares", JsonCuttingTest::spare),
        each(cutting, "buying", JsonCuttingTest::purchase),
        money(cutting, "cost"),
        new Volume(cutting.get("volumeCubicMillimetres").asLong()));
  }

  private static TimberCuts timber(JsonNode timber) {
    return new TimberCuts(
        one(Stock.values(), timber, "stock"),
        text(timber, "timber"),
        length(timber, "kerf"),
        length(timber, "endTrim"),
        each(timber, "boards", JsonCuttingTest::board),
        each(timber, "settings", JsonCuttingTest::setting),
        text(timber, "quality"),
        each(timber, "missing", JsonCuttingTest::missing));
  }

  private static CutBoard board(JsonNode board) {
    return new CutBoard(
        texts(board, "marks"),
        one(CutBoard.Source.values(), board, "source"),
        length(board, "length"),
        length(board, "width"),
        length(board, "thickness"),
        money(board, "price"),
        each(board, "cuts", JsonCuttingTest::cut),
        each(
            board, "avoid", node -> new CutBoard.Stretch(length(node, "from"), length(node, "to"))),
        each(board, "offcuts", JsonCuttingTest::offcut));
  }

  private static CutBoard.Cut cut(JsonNode cut) {
    return new CutBoard.Cut(
        text(cut, "mark"),
        cut.get("spare").asBoolean(),
        length(cut, "from"),
        length(cut, "length"),
        length(cut, "across"),
        length(cut, "width"));
  }

  private static CutBoard.Offcut offcut(JsonNode offcut) {
    return new CutBoard.Offcut(
        length(offcut, "from"),
        length(offcut, "length"),
        length(offcut, "across"),
        length(offcut, "width"),
        offcut.get("keep").asBoolean(),
        text(offcut, "gives"));
  }

  private static StopSetting setting(JsonNode setting) {
    return new StopSetting(
        length(setting, "length"),
        each(
            setting,
            "works",
            work ->
                new StopSetting.Work(
                    text(work, "board"), text(work, "piece"), work.get("count").asInt())));
  }

  private static MissingPieces missing(JsonNode pieces) {
    return new MissingPieces(
        text(pieces, "mark"),
        pieces.get("count").asInt(),
        length(pieces, "length"),
        length(pieces, "width"),
        length(pieces, "thickness"));
  }

  private static ShelfSlats shelf(JsonNode shelf) {
    return new ShelfSlats(
        shelf.get("shelf").asInt(),
        shelf.get("run").asInt(),
        texts(shelf, "marks"),
        length(shelf, "gap"),
        shelf.get("filled").asBoolean());
  }

  private static SparePiece spare(JsonNode spare) {
    return new SparePiece(
        text(spare, "mark"),
        text(spare, "name"),
        text(spare, "use"),
        one(Stock.values(), spare, "stock"),
        length(spare, "length"),
        spare.get("wanted").asInt(),
        spare.get("fromOffcuts").asInt());
  }

  private static Purchase purchase(JsonNode purchase) {
    return new Purchase(
        text(purchase, "what"),
        Optional.ofNullable(purchase.get("quantity")).map(JsonNode::asInt),
        Optional.ofNullable(purchase.get("length")).map(node -> length(purchase, "length")),
        money(purchase, "price"),
        money(purchase, "cost"),
        text(purchase, "note"));
  }

  private static <T> List<T> each(JsonNode node, String key, Function<JsonNode, T> read) {
    return Written.each(node.get(key)).map(read).toList();
  }

  private static List<String> texts(JsonNode node, String key) {
    return each(node, key, JsonNode::asString);
  }

  private static String text(JsonNode node, String key) {
    return node.get(key).asString();
  }

  private static Length length(JsonNode node, String key) {
    return new Length(node.get(key).decimalValue().movePointRight(6).longValueExact());
  }

  private static Optional<BigDecimal> money(JsonNode node, String key) {
    return Optional.ofNullable(node.get(key)).map(JsonNode::decimalValue);
  }

  private static <E extends Enum<E>> E one(E[] values, JsonNode node, String key) {
    return Stream.of(values)
        .filter(
            value ->
                value.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(text(node, key)))
        .findFirst()
        .orElseThrow();
  }
}
