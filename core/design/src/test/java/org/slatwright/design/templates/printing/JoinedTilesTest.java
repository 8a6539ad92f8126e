package org.slatwright.design.templates.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.drafting.PaperBox;

/** Tiles laid back on one another give the template again: all of it, and nothing else. */
class JoinedTilesTest {

  private static final double SAME_MM = 1e-6;

  @ParameterizedTest
  @EnumSource
  void stripsAndPlatesComeTogetherAgain(Paper paper) {
    List<Draft> drafts =
        List.of(
            Drafts.strip("U-drilling", 44, 2000),
            Drafts.plate("base", 500, 400),
            Drafts.plate("small", 120, 90));
    for (Unit unit : Unit.values()) {
      Templates templates =
          new Printing("Cut-flower stand", unit, paper, Length.inches(1, 4)).print(drafts);
      templates.whole().forEach(template -> assertComesTogether(template, templates));
    }
  }

  @Property(tries = 60)
  void anyDraftComesTogetherAgain(
      @ForAll("drafts") Draft draft, @ForAll Paper paper, @ForAll Unit unit) {
    Templates templates =
        new Printing("Any", unit, paper, Length.inches(1, 4)).print(List.of(draft));
    assertComesTogether(templates.whole().get(0), templates);
  }

  @Provide
  Arbitrary<Draft> drafts() {
    return RandomDrafts.any();
  }

  /** A hole is pricked or drilled through one sheet. */
  @ParameterizedTest
  @EnumSource
  void everyHoleOfAStripIsWholeOnOneTileAlone(Paper paper) {
    Draft draft = Drafts.strip("U-drilling", 44, 2000);
    Templates templates =
        new Printing("Stand", Unit.MM, paper, Length.inches(1, 4)).print(List.of(draft));
    for (Draft.Disc disc : draft.whole()) {
      List<PaperBox> touched =
          Joined.of(templates.whole().get(0), templates).stream()
              .map(Joined.Back::window)
              .filter(window -> window.meets(around(disc)))
              .toList();
      assertEquals(1, touched.size(), () -> disc + " in " + touched);
      assertTrue(touched.get(0).contains(around(disc)));
    }
  }

  private static PaperBox around(Draft.Disc disc) {
    PaperPoint centre = disc.centre();
    return new PaperBox(centre.x(), centre.y(), centre.x(), centre.y())
        .grown(disc.radiusMm(), disc.radiusMm());
  }

  private static void assertComesTogether(Template template, Templates templates) {
    List<Joined.Back> tiles = Joined.of(template, templates);
    assertTilesAreInOrderAndCover(template);
    List<Figure> drawn = Leaves.of(template.figures()).toList();
    assertEveryLineShows(drawn, tiles);
    assertNoOtherLineShows(drawn, tiles);
    assertFillsAreTheSame(drawn, tiles);
    assertTextsShowWhole(drawn, tiles);
  }

  private static void assertTilesAreInOrderAndCover(Template template) {
    List<Template.Tile> tiles = template.tiles();
    int columns = 1 + tiles.stream().mapToInt(Template.Tile::column).max().orElseThrow();
    double area = 0;
    for (int i = 0; i < tiles.size(); i++) {
      Template.Tile tile = tiles.get(i);
      assertEquals(i / columns, tile.row());
      assertEquals(i % columns, tile.column());
      Template.Tile left = tile.column() == 0 ? null : tiles.get(i - 1);
      Template.Tile above = tile.row() == 0 ? null : tiles.get(i - columns);
      double overlapX = left == null ? 0 : left.from().x() + left.widthMm() - tile.from().x();
      double overlapY = above == null ? 0 : tile.from().y() + tile.heightMm() - above.from().y();
      assertEquals(left == null ? 0 : 10, overlapX, SAME_MM);
      assertEquals(above == null ? 0 : 10, overlapY, SAME_MM);
      area += (tile.widthMm() - overlapX) * (tile.heightMm() - overlapY);
    }
    assertEquals(template.width().inMm() * template.height().inMm(), area, 1e-3);
  }

  private static void assertEveryLineShows(List<Figure> drawn, List<Joined.Back> tiles) {
    for (Traced line : Traced.of(drawn)) {
      for (PaperPoint point : line.samples()) {
        List<Joined.Back> there =
            tiles.stream().filter(tile -> tile.window().contains(point)).toList();
        assertTrue(!there.isEmpty(), () -> point + " is on no tile");
        there.stream()
            .filter(tile -> tile.window().grown(-SAME_MM, -SAME_MM).contains(point))
            .forEach(tile -> assertTrue(isOn(point, line, tile.shown()), () -> line + ", " + tile));
      }
    }
  }

  private static void assertNoOtherLineShows(List<Figure> drawn, List<Joined.Back> tiles) {
    for (Joined.Back tile : tiles) {
      PaperBox window = tile.window().grown(SAME_MM, SAME_MM);
      for (Traced line : Traced.of(tile.shown())) {
        for (PaperPoint point : line.samples()) {
          assertTrue(window.contains(point), () -> line + " leaves " + window);
          assertTrue(isOn(point, line, drawn), () -> line + " is not in the template");
        }
      }
    }
  }

  private static boolean isOn(PaperPoint point, Traced line, List<Figure> figures) {
    return Traced.of(figures).stream()
        .anyMatch(other -> other.kind() == line.kind() && other.distance(point) < SAME_MM);
  }

  /** By places all over each tile; a place next to an edge may fall on either side. */
  private static void assertFillsAreTheSame(List<Figure> drawn, List<Joined.Back> tiles) {
    for (Joined.Back tile : tiles) {
      PaperBox window = tile.window();
      for (int i = 0; i < 400; i++) {
        PaperPoint point =
            new PaperPoint(
                window.left() + window.width() * (i % 20 + 0.37) / 20,
                window.bottom() + window.height() * (i / 20 + 0.61) / 20);
        long expected = fills(drawn).filter(fill -> isIn(point, fill)).count();
        boolean onEdge = fills(drawn).anyMatch(fill -> edge(fill).distance(point) < SAME_MM);
        if (!onEdge) {
          assertEquals(expected, fills(tile.shown()).filter(fill -> isIn(point, fill)).count());
        }
      }
    }
  }

  private static Stream<Figure.Fill> fills(List<Figure> figures) {
    return figures.stream()
        .filter(figure -> figure instanceof Figure.Fill)
        .map(figure -> (Figure.Fill) figure);
  }

  private static Traced edge(Figure.Fill fill) {
    return new Traced(null, List.of(new Figure.Polyline(fill.points(), true, null)));
  }

  private static boolean isIn(PaperPoint point, Figure.Fill fill) {
    boolean in = false;
    List<PaperPoint> points = fill.points();
    for (int i = 0; i < points.size(); i++) {
      PaperPoint from = points.get(i);
      PaperPoint to = points.get((i + 1) % points.size());
      if (from.y() > point.y() != to.y() > point.y()) {
        double share = (point.y() - from.y()) / (to.y() - from.y());
        in ^= point.x() < from.x() + share * (to.x() - from.x());
      }
    }
    return in;
  }

  private static void assertTextsShowWhole(List<Figure> drawn, List<Joined.Back> tiles) {
    for (Joined.Back tile : tiles) {
      PaperBox window = tile.window().grown(SAME_MM, SAME_MM);
      Leaves.texts(tile.shown())
          .forEach(text -> assertTrue(window.contains(TextRoom.of(text)), text::text));
    }
    List<String> shown =
        tiles.stream().flatMap(tile -> Leaves.texts(tile.shown())).map(Figure.Text::text).toList();
    List<String> asked = Leaves.texts(drawn).map(Figure.Text::text).toList();
    assertEquals(asked.stream().sorted().toList(), shown.stream().distinct().sorted().toList());
  }
}
