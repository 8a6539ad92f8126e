package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

class CoverSheetTest {

  private static final String POT_BENCH =
      """
      slatwright: 1
      title: "%s"
      holds:
        - { name: "%s", width: 260, depth: 150, height: 240, across: 2 }
        - { name: clay bag, width: 300, depth: 200, height: 320 }
      timber:
        frame: { section: 44 x 44, species: larch }
        rails: { section: 44 x 70 }
        slats: { section: 18 x 95 }
      rack:
        bays: 2
        interior-width: 580
        rail-length: 320
        openings:
          - { clear: 350 }
          - { clear: 250 }
          - { clear: 250 }
      slats: { per-shelf: 3 }
      shop: { paper: %s }
      load: { per-shelf: 40 kg }
      """;

  @Test
  void itSaysWhatTheRackIs() throws Exception {
    Plan plan = plan("Pot bench", "pot", "A4");
    Box extent = plan.assembly().extent();
    String text = text(plan.sheets().get(0));

    assertEquals("drawings/00-cover", plan.sheets().get(0).name());
    for (String said :
        List.of(
            "Pot bench",
            plan.lengths().withUnit(extent.size(Axis.X)) + " wide",
            plan.lengths().withUnit(extent.size(Axis.Y)) + " deep",
            plan.lengths().withUnit(extent.size(Axis.Z)) + " high",
            "4, over 2 bays",
            "4 × pot on each shelf of a bay",
            "or 1 × clay bag on shelves 1, 4 of a bay",
            "40 kg, spread evenly over each shelf",
            "larch frames 44 × 44 mm rails 44 × 70 mm slats 18 × 95 mm",
            plan.quantities().mass().withUnit(plan.lengths().unit()) + ", when empty",
            "Caution: fix the rack to the wall")) {
      assertTrue(text.contains(said), () -> "'" + said + "' is not in " + text);
    }
  }

  /** Sheet 1 stays the first to build from. */
  @Test
  void theCoverIsNotCounted() throws Exception {
    List<Sheet> sheets = plan("Pot bench", "pot", "A3").sheets();

    assertEquals("drawings/01-general-arrangement", sheets.get(1).name());
    assertTrue(text(sheets.get(1)).contains("1 of " + (sheets.size() - 1)));
  }

  @Property(tries = 60)
  void everyTextLiesInsideTheFrameAndClearOfEveryOtherAndOfThePicture(
      @ForAll("papers") String paper,
      @ForAll("titles") String title,
      @ForAll("titles") String thing)
      throws Exception {
    Sheet cover = plan(title, thing, paper).sheets().get(0);

    Tidy.check(cover);
    assertPictureClearOfText(cover);
  }

  @Provide
  Arbitrary<String> papers() {
    return Arbitraries.of("A4", "A3", "letter", "tabloid");
  }

  @Provide
  Arbitrary<String> titles() {
    return Arbitraries.of(
        "Pots",
        "رف لتجفيف الأعشاب في البيت الزجاجي الكبير",
        "A very long title indeed for a rack that holds seeds, pots, trays and whatever else",
        "W".repeat(100));
  }

  private static void assertPictureClearOfText(Sheet cover) {
    Inked inked = Inked.of(cover);
    PaperBox picture =
        cover.views().stream()
            .filter(view -> view.id().equals("pictorial"))
            .flatMap(view -> Inked.of(view.figures()).lines().stream())
            .flatMap(line -> line.points().stream())
            .map(point -> new PaperBox(point.x(), point.y(), point.x(), point.y()))
            .reduce(CoverSheetTest::around)
            .orElseThrow();
    assertTrue(picture.height() > 40, () -> "a picture to look at, but " + picture);
    for (Inked.Words words : inked.words()) {
      assertTrue(
          words.room().getMinX() > picture.right()
              || words.room().getMaxX() < picture.left()
              || words.room().getMinY() > picture.top()
              || words.room().getMaxY() < picture.bottom(),
          () -> words + " lies on the picture at " + picture);
    }
  }

  private static PaperBox around(PaperBox one, PaperBox other) {
    return new PaperBox(
        Math.min(one.left(), other.left()),
        Math.min(one.bottom(), other.bottom()),
        Math.max(one.right(), other.right()),
        Math.max(one.top(), other.top()));
  }

  private static Plan plan(String title, String thing, String paper) throws RackFileException {
    byte[] file = POT_BENCH.formatted(title, thing, paper).getBytes(StandardCharsets.UTF_8);
    return Planner.plan(RackFileReader.read(file, "rack.yaml", List.of()));
  }

  private static String text(Sheet sheet) {
    return String.join(" ", Inked.of(sheet).words().stream().map(Inked.Words::text).toList());
  }
}
