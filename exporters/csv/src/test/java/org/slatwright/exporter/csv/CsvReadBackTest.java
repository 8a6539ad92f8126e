package org.slatwright.exporter.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

/** What Python's csv module reads is what the plan says. */
class CsvReadBackTest {

  private static final List<String> FROM = List.of("start end", "face edge", "back");

  @TempDir Path folder;

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theCutListCountsThePiecesThatArePlaced(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = way.read("cut-list.csv", folder);
    assertEquals(way.plan().cutList().size(), rows.size());
    for (Map<String, String> row : rows) {
      long placed =
          way.plan().assembly().pieces().stream()
              .filter(piece -> piece.part().mark().equals(row.get("mark")))
              .count();
      assertEquals(placed, Long.parseLong(row.get("quantity")), row.toString());
    }
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theCutListHasTheSizesOfTheModel(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = way.read("cut-list.csv", folder);
    for (int i = 0; i < rows.size(); i++) {
      CutLine line = way.plan().cutList().get(i);
      Part part = line.part();
      assertEquals(part.mark(), rows.get(i).get("mark"));
      assertEquals(part.name(), rows.get(i).get("part"));
      way.assertLength(part.shape().length(), rows.get(i), "length");
      way.assertLength(part.shape().width(), rows.get(i), "width");
      way.assertLength(part.shape().thickness(), rows.get(i), "thickness");
      assertEquals(line.timber(), rows.get(i).get("timber"));
      assertEquals(line.note(), rows.get(i).get("note"));
    }
  }

  /** Each row is marked out on a part that lies along the axes, as the bench would. */
  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theHoleListMarksOutTheHolesOfTheModel(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = way.read("hole-list.csv", folder);
    List<Part> parts = way.plan().assembly().parts();
    assertEquals(parts.stream().mapToInt(part -> part.holes().size()).sum(), rows.size());
    for (Map<String, String> row : rows) {
      Part part =
          parts.stream().filter(p -> p.mark().equals(row.get("part"))).findFirst().orElseThrow();
      Hole hole = part.hole(row.get("hole"));
      Point3 mouth = lying(part).bore(hole).mouth();
      assertEquals(hole.face().word(), row.get("face"));
      List<String> markedFrom =
          FROM.stream().filter(from -> !distance(way, row, from).isEmpty()).toList();
      assertEquals(2, markedFrom.size(), () -> row + " marks no place");
      for (String from : markedFrom) {
        way.assertLength(coordinate(mouth, from), row, "distance from " + from);
      }
      way.assertLength(hole.diameter(), row, "diameter");
      way.assertLength(hole.depth(), row, "depth");
      assertEquals(hole.through() ? "yes" : "no", row.get("through"));
    }
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theFindingsAreThoseOfThePlan(Way way) throws IOException, InterruptedException {
    List<List<String>> rows =
        ReadByPython.rows(Written.plan(way.plan(), way.inches()).bytes("findings.csv"), folder);
    List<List<String>> expected =
        Stream.concat(
                Stream.of(
                    List.of(
                        "severity",
                        "rule",
                        "subject",
                        "message",
                        "value",
                        "limit",
                        "advice",
                        "source")),
                way.plan().findings().stream().map(CsvReadBackTest::row))
            .toList();
    assertEquals(expected, rows);
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theStepsAreThoseOfTheOrderOfWork(Way way) throws IOException, InterruptedException {
    List<Map<String, String>> rows = way.read("order-of-work.csv", folder);
    List<Step> steps = way.plan().work().steps();
    assertFalse(steps.isEmpty());
    assertEquals(steps.size(), rows.size());
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      Map<String, String> row = rows.get(i);
      assertEquals(Integer.toString(step.number()), row.get("step"));
      assertEquals(step.title(), row.get("title"));
      assertEquals(step.check().in(way.plan().lengths()), row.get("check"));
      assertEquals(step.caution(), row.get("caution"));
      assertEquals(Integer.toString(step.work().count()), row.get("work (min)"));
      String waiting = step.then().map(wait -> Integer.toString(wait.time().count())).orElse("");
      assertEquals(waiting, row.get("then wait (min)"));
      for (Wording sentence : step.doing()) {
        assertTrue(row.get("how").contains(sentence.in(way.plan().lengths())), row::toString);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.exporter.csv.Way#all")
  void theQuantitiesAreThoseOfThePlan(Way way) throws IOException, InterruptedException {
    Quantities all = way.plan().quantities();
    Unit unit = way.plan().lengths().unit();
    List<Map<String, String>> rows = way.read("quantities.csv", folder);
    assertEquals(all.mass().withUnit(unit), valueWithUnit(rows, "mass of the empty rack"));
    assertEquals(all.finishArea().withUnit(unit), valueWithUnit(rows, "finish area"));
    assertEquals(all.glue().withUnit(unit), valueWithUnit(rows, "glue"));
    assertEquals(all.dowels() + " pieces", valueWithUnit(rows, "dowels"));
    assertEquals(all.fixings() + " pieces", valueWithUnit(rows, "fixings"));
    assertQuantity(way, all.dowelRod(), rows, "dowel rod");
    assertQuantity(
        way,
        way.plan().lengths().rounded(all.centreOfGravity().x()),
        rows,
        "centre of gravity from the left");
    assertQuantity(
        way,
        way.plan().lengths().rounded(all.centreOfGravity().y()),
        rows,
        "centre of gravity from the front");
    assertQuantity(
        way,
        way.plan().lengths().rounded(all.centreOfGravity().z()),
        rows,
        "centre of gravity above the floor");
    assertEquals(
        all.parts().stream()
            .map(part -> part.part().mark() + " " + part.each().withUnit(unit))
            .toList(),
        rows.stream()
            .filter(row -> row.get("quantity").equals("mass of one piece"))
            .map(row -> row.get("part") + " " + row.get("value") + " " + row.get("unit"))
            .toList());
  }

  @Test
  void whatFitsIsAsInThePlan() throws IOException, InterruptedException {
    Plan plan = SamplePlans.everyKind();
    Way way = new Way(plan, "decimal");
    List<Map<String, String>> rows = way.read("what-fits.csv", folder);
    assertEquals(plan.fits().size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      Fit fit = plan.fits().get(i);
      Map<String, String> row = rows.get(i);
      assertEquals(fit.thing(), row.get("thing"));
      assertEquals(
          List.of(fit.shelf() + "", fit.across() + "", fit.deep() + ""),
          List.of(row.get("shelf"), row.get("across"), row.get("deep")));
      assertEquals(fit.high().map(Object::toString).orElse(""), row.get("high"));
      assertEquals(fit.turned() ? "yes" : "no", row.get("turned"));
      assertEquals(fit.enough() ? "yes" : "no", row.get("enough"));
      assertEquals(plan.lengths().decimal(fit.spareAcross()), row.get("spare across (mm)"));
      assertEquals(plan.lengths().decimal(fit.spareDeep()), row.get("spare deep (mm)"));
      assertEquals(
          fit.spareAbove().map(plan.lengths()::decimal).orElse(""), row.get("spare above (mm)"));
    }
  }

  @Test
  void whereNothingIsHeldThereIsNoTableOfWhatFits() throws IOException {
    Plan bare = SamplePlans.bare(SamplePlans.everyKind());
    assertEquals(List.of(), bare.fits());
    assertFalse(Written.plan(bare, "decimal").names().contains("what-fits.csv"));
  }

  @Test
  void textOfAnyKindComesBackWhole() throws IOException, InterruptedException {
    for (String text : SamplePlans.ODD_TITLES) {
      String shown = text.startsWith("=") ? "'" + text : text;
      assertEquals(shown, noteReadBack(text));
    }
  }

  @Test
  void textThatASpreadsheetWouldRunIsDefused() throws IOException, InterruptedException {
    // First characters: OWASP, "CSV Injection"; OWASP ASVS 5.0, 1.2.10 adds the null character.
    for (String start : List.of("=", "+", "-", "@", "\t", "\r")) {
      String text = start + "HYPERLINK(\"http://example.org\",\"oak\")";
      assertEquals("'" + text, noteReadBack(text));
    }
    assertEquals("oak = good", noteReadBack("oak = good"));
  }

  private String noteReadBack(String note) throws IOException, InterruptedException {
    Plan plan = WareRack.inMillimetres();
    CutLine plain = plan.cutList().get(0);
    Plan noted =
        new Plan(
            plan.title(),
            plan.lengths(),
            plan.chains(),
            plan.fits(),
            plan.assembly(),
            List.of(new CutLine(plain.part(), note, "the end")),
            plan.cutting(),
            plan.quantities(),
            plan.work(),
            plan.jig(),
            plan.patterns(),
            plan.solids(),
            plan.findings(),
            plan.sheets(),
            plan.templates());
    Map<String, String> row = new Way(noted, "decimal").read("cut-list.csv", folder).get(0);
    assertEquals("the end", row.get("note"));
    assertEquals("600", row.get("length (mm)"));
    return row.get("timber");
  }

  private static String valueWithUnit(List<Map<String, String>> rows, String quantity) {
    Map<String, String> row = quantity(rows, quantity);
    return row.get("value") + " " + row.get("unit");
  }

  private static void assertQuantity(
      Way way, Length exact, List<Map<String, String>> rows, String quantity) {
    Map<String, String> row = quantity(rows, quantity);
    way.assertLength(exact, Map.of("x (" + row.get("unit") + ")", row.get("value")), "x");
  }

  private static Map<String, String> quantity(List<Map<String, String>> rows, String quantity) {
    return rows.stream()
        .filter(row -> row.get("quantity").equals(quantity))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + quantity));
  }

  private static List<String> row(Finding finding) {
    return List.of(
        finding.severity().word(),
        finding.rule(),
        finding.subject(),
        finding.message(),
        finding.value(),
        finding.limit(),
        finding.advice(),
        finding.source());
  }

  private static Piece lying(Part part) {
    return new Piece(
        "lying", part, new Placement(Point3.ORIGIN, Direction.PLUS_X, Direction.PLUS_Y));
  }

  private static String distance(Way way, Map<String, String> row, String from) {
    return row.get("distance from " + from + " (" + way.plan().lengths().unit().symbol() + ")");
  }

  private static Length coordinate(Point3 mouth, String from) {
    return switch (from) {
      case "start end" -> mouth.x();
      case "face edge" -> mouth.y();
      case "back" -> mouth.z();
      default -> throw new AssertionError("measured from " + from);
    };
  }
}
