package org.slatwright.design.templates.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.drafting.PaperBox;

class PagesTest {

  private static final Length QUARTER_INCH = Length.inches(1, 4);

  static Stream<Printing> printings() {
    return Stream.of(Paper.values())
        .flatMap(
            paper ->
                Stream.of(0, 2, 4, 8)
                    .map(
                        eighths ->
                            new Printing(
                                "Stand for buckets of cut flowers, with a long name that a page"
                                    + " hardly holds",
                                eighths % 4 == 0 ? Unit.MM : Unit.INCH,
                                paper,
                                Length.inches(eighths, 8))));
  }

  static List<Draft> drafts() {
    List<Draft> drafts =
        new ArrayList<>(
            List.of(
                Drafts.strip("U-drilling", 44, 2000),
                Drafts.strip("R-drilling", 70, 320),
                Drafts.plate("base-plate", 500, 400),
                Drafts.plate("J1-guide-plate", 120, 90)));
    IntStream.range(1, 20).forEach(i -> drafts.add(Drafts.plate("S" + i + "-spacer", 25, 40)));
    return drafts;
  }

  @ParameterizedTest
  @MethodSource("printings")
  void nothingIsPrintedInTheMargin(Printing printing) {
    for (Sheet page : printing.print(drafts()).pages()) {
      double margin = printing.margin().inMm();
      PaperBox live = new PaperBox(0, 0, page.widthMm(), page.heightMm()).grown(-margin, -margin);
      figures(page)
          .forEach(figure -> assertTrue(live.contains(ink(figure)), () -> figure + " in " + live));
    }
  }

  @ParameterizedTest
  @MethodSource("printings")
  void noTextLiesOnAnother(Printing printing) {
    for (Sheet page : printing.print(drafts()).pages()) {
      List<Figure.Text> texts = Leaves.texts(figures(page).toList()).toList();
      for (int i = 0; i < texts.size(); i++) {
        PaperBox room = TextRoom.of(texts.get(i)).grown(-0.03, -0.03);
        for (Figure.Text other : texts.subList(i + 1, texts.size())) {
          Figure.Text text = texts.get(i);
          assertFalse(room.meets(TextRoom.of(other)), () -> page.name() + text + other);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("printings")
  void tilesKeepClearOfOneAnotherAndOfAllElse(Printing printing) {
    Templates templates = printing.print(drafts());
    for (int i = 0; i < templates.pages().size(); i++) {
      int number = i;
      List<PaperBox> tiles =
          templates.whole().stream()
              .flatMap(template -> template.tiles().stream())
              .filter(tile -> tile.page() == number)
              .map(PagesTest::onPage)
              .toList();
      for (PaperBox tile : tiles) {
        PaperBox clear = tile.grown(Nesting.SPACING_MM - 0.01, Nesting.SPACING_MM - 0.01);
        assertTrue(tiles.stream().allMatch(other -> other == tile || !clear.meets(other)));
        furniture(templates.pages().get(i))
            .forEach(figure -> assertFalse(tile.meets(ink(figure)), figure::toString));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("printings")
  void everyPageProvesItsScaleBothWays(Printing printing) {
    for (Sheet page : printing.print(drafts()).pages()) {
      double rule = ink(cluster(page, "check-rule-across").figures().get(0)).width() - 0.25;
      double up = ink(cluster(page, "check-rule-up").figures().get(0)).height() - 0.25;
      assertEquals(152.4, rule, 1e-9);
      assertEquals(152.4, up, 1e-9);
      PaperBox square = ink(cluster(page, "check-square").figures().get(0)).grown(-0.125, -0.125);
      double side = printing.units() == Unit.MM ? 50 : 50.8;
      assertEquals(side, square.width(), 1e-9);
      assertEquals(side, square.height(), 1e-9);
    }
  }

  @Test
  void theRulesAreTickedEveryMillimetreAndEveryEighthOfAnInch() {
    Sheet page =
        new Printing("Stand", Unit.MM, Paper.A4, QUARTER_INCH).print(drafts()).pages().get(0);
    List<Figure> figures = cluster(page, "check-rule-across").figures();
    List<Double> ticks =
        figures.stream()
            .skip(1)
            .filter(figure -> figure instanceof Figure.Polyline)
            .map(figure -> ink(figure).middleX() - ink(figures.get(0)).left() - 0.125)
            .toList();
    assertEquals(151 + 6 * 8 + 1, ticks.size());
    IntStream.rangeClosed(0, 150).forEach(i -> assertEquals(i, ticks.get(i), 1e-9));
    IntStream.rangeClosed(0, 48).forEach(i -> assertEquals(i * 3.175, ticks.get(151 + i), 1e-9));
  }

  @Test
  void everyPageSaysHowToPrintItAndWhichItIs() {
    Templates templates =
        new Printing("Flower stand", Unit.MM, Paper.A4, QUARTER_INCH).print(drafts());
    int count = templates.pages().size();
    for (int i = 0; i < count; i++) {
      Sheet page = templates.pages().get(i);
      assertEquals("templates/page-" + (i + 1), page.name());
      List<String> words = words(page);
      assertTrue(words.contains("Flower stand"));
      assertTrue(words.contains("Templates, page " + (i + 1) + " of " + count));
      assertTrue(words.stream().anyMatch(line -> line.contains("at 100 % (actual size), never")));
      assertTrue(words.stream().anyMatch(line -> line.contains("printed-length")));
      assertTrue(words.containsAll(List.of("150 ± 0.5 mm", "6 ± 1/64\"")), words::toString);
    }
  }

  /** What the maker is asked to measure is what an exporter holds the answer against. */
  @ParameterizedTest
  @EnumSource(Unit.class)
  void aPageAsksForTheRuleThatPlansOfItsUnitAreHeldAgainst(Unit unit) {
    Sheet page =
        new Printing("Flower stand", unit, Paper.A4, QUARTER_INCH).print(drafts()).pages().get(0);
    String rule = new LengthFormat(unit).withUnit(Templates.checkRule(unit));
    String words = String.join(" ", words(page));
    assertTrue(words.contains("give what " + rule + " measured, across and up,"), words);
  }

  @Test
  void theMapAndTheLabelTellWhereNeighboursAre() {
    Templates templates =
        new Printing("Flower stand", Unit.MM, Paper.A4, QUARTER_INCH)
            .print(List.of(Drafts.strip("U-drilling", 44, 1500)));
    List<Template.Tile> tiles = templates.whole().get(0).tiles();
    Template.Tile second = tiles.get(1);
    String words = String.join(" ", words(templates.pages().get(second.page())));
    int above = tiles.get(0).page() + 1;
    int below = tiles.get(2).page() + 1;
    String row = "U drilling, row 2 of " + tiles.size();
    assertTrue(words.contains(row + "; A: row 1, page " + above), words);
    assertTrue(words.contains("B: row 3, page " + below), words);
    assertTrue(
        words.contains(
            row
                + ". Trim at the dashed line and lay it over row 1 (page "
                + above
                + ") at A. Over it goes row 3 (page "
                + below
                + ") at B."),
        words);
  }

  /** Half of each mark is on the later tile, all of it on the earlier, in the same place. */
  @Test
  void theMarksOfASeamMeet() {
    TiledDraft tiled = new TiledDraft(Drafts.strip("U", 44, 600), 130, 250);
    for (int row = 1; row < tiled.grid().rows().size(); row++) {
      PaperBox later = tiled.grid().window(row, 0);
      List<Figure> earlier = new Clip(later).of(diamonds(tiled.marks(row - 1, 0)));
      double bottom = tiled.grid().window(row - 1, 0).bottom();
      PaperBox overlap = new PaperBox(later.left(), bottom, later.right(), later.top());
      assertEquals(
          new Clip(overlap).of(earlier), new Clip(overlap).of(diamonds(tiled.marks(row, 0))));
      assertFalse(earlier.isEmpty());
    }
  }

  private static List<Figure> diamonds(List<Figure> marks) {
    return marks.stream()
        .filter(figure -> figure instanceof Figure.Polyline line && line.line() == LineKind.THIN)
        .toList();
  }

  private static Stream<Figure> figures(Sheet page) {
    return page.views().stream().flatMap(view -> Leaves.of(view.figures()));
  }

  /** All but tiles and cards. */
  private static Stream<Figure> furniture(Sheet page) {
    return page.views().stream()
        .filter(view -> List.of("head", "checks", "map").contains(view.id()))
        .flatMap(view -> Leaves.of(view.figures()));
  }

  private static List<String> words(Sheet page) {
    return Leaves.texts(figures(page).toList()).map(Figure.Text::text).toList();
  }

  private static Figure.Cluster cluster(Sheet page, String id) {
    return page.views().stream()
        .map(View::figures)
        .flatMap(List::stream)
        .filter(figure -> figure instanceof Figure.Cluster)
        .map(figure -> (Figure.Cluster) figure)
        .filter(cluster -> cluster.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static PaperBox onPage(Template.Tile tile) {
    PaperPoint low = tile.onPage(tile.from());
    PaperPoint high = tile.onPage(tile.from().moved(tile.widthMm(), tile.heightMm()));
    return new PaperBox(
        Math.min(low.x(), high.x()),
        Math.min(low.y(), high.y()),
        Math.max(low.x(), high.x()),
        Math.max(low.y(), high.y()));
  }

  /** The box around a figure with the width of its line. */
  private static PaperBox ink(Figure figure) {
    if (figure instanceof Figure.Text text) {
      return TextRoom.of(text);
    } else if (figure instanceof Figure.Fill fill) {
      return around(fill.points());
    }
    Traced line = Traced.of(List.of(figure)).get(0);
    return around(line.samples()).grown(line.kind().widthMm() / 2, line.kind().widthMm() / 2);
  }

  private static PaperBox around(List<PaperPoint> points) {
    return points.stream()
        .map(point -> new PaperBox(point.x(), point.y(), point.x(), point.y()))
        .reduce(PaperBox::with)
        .orElseThrow();
  }
}
