package org.slatwright.exporter.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.templates.printing.Draft;
import org.slatwright.design.templates.printing.Printing;
import org.slatwright.testkit.Ink;

/** A strip of two metres with a hole near each end, printed, measured and joined. */
class PrintedStripTest {

  private static final double RADIUS = 4;
  private static final double PAGE_BOUND = 0.05;
  private static final double JOINED_BOUND = 0.1;
  private static final PaperPoint LOW = new PaperPoint(22, 30);
  private static final PaperPoint HIGH = new PaperPoint(22, 1970);

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void theHolesOfAStripOnA4AreAsFarApartAsTheyShouldBe(Renderer renderer) throws Exception {
    assertTrueSize(Paper.A4, renderer);
  }

  @Test
  void soTheyAreOnLetter() throws Exception {
    assertTrueSize(Paper.LETTER, Renderer.LIBRSVG);
  }

  private void assertTrueSize(Paper paper, Renderer renderer) throws Exception {
    Templates templates =
        new Printing("Stand for potted herbs", Unit.MM, paper, Length.inches(1, 4))
            .print(List.of(strip()));
    List<PaperPoint> found = new ArrayList<>();
    for (int i = 0; i < templates.pages().size(); i++) {
      Sheet page = templates.pages().get(i);
      Ink ink = renderer.draw(Exported.bytes(page, "outlines"), folder);
      assertSquare(page, ink);
      for (Template.Tile tile : templates.whole().get(0).tiles()) {
        if (tile.page() == i) {
          found.addAll(holes(tile, ink));
        }
      }
    }
    assertEquals(2, found.size(), "each hole is whole on one tile");
    double apart =
        Math.hypot(found.get(0).x() - found.get(1).x(), found.get(0).y() - found.get(1).y());
    assertEquals(HIGH.y() - LOW.y(), apart, JOINED_BOUND);
  }

  private static Draft strip() {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        new Figure.Polyline(
            List.of(
                new PaperPoint(0, 0),
                new PaperPoint(44, 0),
                new PaperPoint(44, 2000),
                new PaperPoint(0, 2000)),
            true,
            LineKind.VISIBLE));
    List<Draft.Disc> discs = new ArrayList<>();
    for (PaperPoint hole : List.of(LOW, HIGH)) {
      figures.add(new Figure.Circle(hole, RADIUS, LineKind.THIN));
      discs.add(new Draft.Disc(hole, RADIUS + 3));
    }
    return new Draft(
        "templates/U-drilling",
        "holes of the upright",
        List.of(),
        Length.mm(44),
        Length.mm(2000),
        figures,
        discs);
  }

  /** Its sides are ink along the middle lines of the square, a quarter of a millimetre wide. */
  private static void assertSquare(Sheet page, Ink ink) {
    PaperPoint low = square(page).points().get(0);
    double side = 50;
    double left = ink.along(low.y() + 2, low.x() - 1, low.x() + 1).middle();
    double right = ink.along(low.y() + 2, low.x() + side - 1, low.x() + side + 1).middle();
    double bottom = ink.up(low.x() + 1, low.y() - 1, low.y() + 1).middle();
    double top = ink.up(low.x() + 1, low.y() + side - 1, low.y() + side + 1).middle();
    assertEquals(side, right - left, PAGE_BOUND, page.name());
    assertEquals(side, top - bottom, PAGE_BOUND, page.name());
  }

  private static Figure.Polyline square(Sheet page) {
    return page.views().stream()
        .flatMap(view -> view.figures().stream())
        .filter(
            figure ->
                figure instanceof Figure.Cluster cluster && cluster.id().equals("check-square"))
        .map(figure -> (Figure.Polyline) ((Figure.Cluster) figure).figures().get(0))
        .findFirst()
        .orElseThrow();
  }

  /** The holes that a tile shows whole, where they are found on the page, laid on the strip. */
  private static List<PaperPoint> holes(Template.Tile tile, Ink ink) {
    List<PaperPoint> found = new ArrayList<>();
    for (PaperPoint hole : List.of(LOW, HIGH)) {
      double up = hole.y() - tile.from().y();
      if (up > RADIUS && up < tile.heightMm() - RADIUS) {
        PaperPoint page = tile.onPage(hole);
        found.add(onStrip(tile, middle(ink, page)));
      }
    }
    return found;
  }

  private static PaperPoint middle(Ink ink, PaperPoint near) {
    Ink.Extent extent =
        ink.extent(
            near.x() - RADIUS - 1,
            near.y() - RADIUS - 1,
            near.x() + RADIUS + 1,
            near.y() + RADIUS + 1);
    assertTrue(extent.right() - extent.left() > 2 * RADIUS, "a whole circle");
    return new PaperPoint(
        (extent.left() + extent.right()) / 2, (extent.bottom() + extent.top()) / 2);
  }

  private static PaperPoint onStrip(Template.Tile tile, PaperPoint page) {
    double dx = page.x() - tile.at().x();
    double dy = page.y() - tile.at().y();
    return tile.turned() ? tile.from().moved(dy, -dx) : tile.from().moved(dx, dy);
  }
}
