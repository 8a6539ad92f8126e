package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.Ink;
import org.slatwright.testkit.SamplePlans;

/**
 * Pages drawn at 600 dots an inch by Poppler and by MuPDF, readers outside the project, and
 * measured. Bounds are 0.05 mm, a little over one pixel.
 */
class TrueSizeTest {

  private static final double BOUND = 0.05;
  private static final String LETTERS = "HHHH";
  private static final double CAPITALS = 10;
  private static final double WIDTH = Lettering.width(LETTERS, CAPITALS);

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void linesAndCirclesMeasureWhatTheyShould(Renderer renderer) throws Exception {
    Ink ink =
        drawn(
            renderer,
            Exported.planOf(
                line(20, 100, 120, 100),
                line(150, 40, 150, 140),
                new Figure.Circle(at(215, 100), 50, LineKind.THIN)));
    assertEquals(297, ink.widthMm(), BOUND);
    assertEquals(210, ink.heightMm(), BOUND);
    assertEquals(100, ink.along(100, 10, 130).length(), BOUND);
    assertEquals(70, ink.along(100, 10, 130).middle(), BOUND);
    assertEquals(100, ink.up(150, 30, 150).length(), BOUND);
    assertEquals(90, ink.up(150, 30, 150).middle(), BOUND);
    assertEquals(0.25, ink.up(70, 98, 102).length(), BOUND);
    assertRound(ink, 215, 100, 50, 50);
  }

  @ParameterizedTest
  @EnumSource
  void everyKindOfLineIsAsWideAsItShould(Renderer renderer) throws Exception {
    LineKind[] kinds = LineKind.values();
    Figure[] lines = new Figure[kinds.length];
    for (int i = 0; i < kinds.length; i++) {
      lines[i] = Figure.Polyline.line(at(20, 20 + 10 * i), at(120, 20 + 10 * i), kinds[i]);
    }
    Ink ink = drawn(renderer, Exported.planOf(lines));
    for (int i = 0; i < kinds.length; i++) {
      double y = 20 + 10 * i;
      assertEquals(kinds[i].widthMm(), ink.up(21, y - 2, y + 2).length(), BOUND);
      assertEquals(y, ink.up(21, y - 2, y + 2).middle(), BOUND);
    }
  }

  @ParameterizedTest
  @EnumSource
  void letteringStandsWhereItShould(Renderer renderer) throws Exception {
    Ink ink =
        drawn(
            renderer,
            Exported.planOf(
                letters(20, 180, Align.START, 0),
                letters(150, 180, Align.MIDDLE, 0),
                letters(280, 180, Align.END, 0),
                letters(30, 20, Align.START, 90)));
    Ink.Extent start = ink.extent(10, 170, 80, 200);
    assertEquals(180, start.bottom(), BOUND);
    assertEquals(CAPITALS, start.height(), BOUND);
    // The letter H has as much room on its left as on its right, so its ink is centred.
    assertEquals(20 + WIDTH / 2, middle(start), BOUND);
    assertEquals(150, middle(ink.extent(110, 170, 190, 200)), BOUND);
    assertEquals(280 - WIDTH / 2, middle(ink.extent(220, 170, 290, 200)), BOUND);
    Ink.Extent upright = ink.extent(10, 10, 60, 80);
    assertEquals(30, upright.right(), BOUND);
    assertEquals(CAPITALS, upright.width(), BOUND);
    assertEquals(20 + WIDTH / 2, (upright.bottom() + upright.top()) / 2, BOUND);
  }

  /** The right-hand corners of its triangle, with half the width of their lines. */
  @ParameterizedTest
  @EnumSource
  void theSheetOfEveryKindIsTrue(Renderer renderer) throws Exception {
    Ink ink = drawn(renderer, SamplePlans.everyKind());
    Ink.Extent corners = ink.extent(60, 15, 80, 65);
    assertEquals(70.25, corners.right(), BOUND);
    assertEquals(19.75, corners.bottom(), BOUND);
    assertEquals(60.25, corners.top(), BOUND);
  }

  @ParameterizedTest
  @EnumSource
  void theTemplatePageOfEveryKindIsTrue(Renderer renderer) throws Exception {
    Ink ink = drawn(renderer, SamplePlans.everyKind(), Exported.TEMPLATES, 1, Map.of());
    assertEquals(210, ink.widthMm(), BOUND);
    assertEquals(297, ink.heightMm(), BOUND);
    assertTile(ink, 1, 1);
  }

  /** A printer that makes 148.6 mm of 150 across and 151 mm up makes this page true again. */
  @ParameterizedTest
  @EnumSource
  void aTemplatePageForAPrinterThatIsOffIsOffTheOtherWay(Renderer renderer) throws Exception {
    Map<String, String> option = Map.of("printed-length", "148.6 mm x 151 mm");
    Ink ink = drawn(renderer, SamplePlans.everyKind(), Exported.PLAN, 3, option);
    assertTile(ink, 150 / 148.6, 150 / 151.0);
  }

  /** The upper half of the template, 44 mm wide and 205 high, with a hole of 10 mm. */
  private static void assertTile(Ink ink, double across, double up) {
    double left = 105 + (20 - 105) * across;
    double right = 105 + (64 - 105) * across;
    double bottom = 148.5 + (30 - 148.5) * up;
    double top = 148.5 + (235 - 148.5) * up;
    assertEquals(left, ink.along(100, left - 3, left + 3).middle(), BOUND);
    assertEquals(right, ink.along(100, right - 3, right + 3).middle(), BOUND);
    assertEquals(bottom, ink.up(30, bottom - 3, bottom + 3).middle(), BOUND);
    assertEquals(top, ink.up(30, top - 3, top + 3).middle(), BOUND);
    assertRound(ink, 105 + (42 - 105) * across, 148.5 + (135 - 148.5) * up, 5 * across, 5 * up);
  }

  private static void assertRound(Ink ink, double x, double y, double across, double up) {
    assertEquals(x - across, ink.along(y, x - across - 2, x - across + 2).middle(), BOUND);
    assertEquals(x + across, ink.along(y, x + across - 2, x + across + 2).middle(), BOUND);
    assertEquals(y - up, ink.up(x, y - up - 2, y - up + 2).middle(), BOUND);
    assertEquals(y + up, ink.up(x, y + up - 2, y + up + 2).middle(), BOUND);
  }

  private Ink drawn(Renderer renderer, Plan plan)
      throws ExportException, IOException, InterruptedException {
    return drawn(renderer, plan, Exported.PLAN, 1, Map.of());
  }

  private Ink drawn(Renderer renderer, Plan plan, String book, int page, Map<String, String> option)
      throws ExportException, IOException, InterruptedException {
    Path file = folder.resolve(book);
    Files.write(file, Exported.files(plan, option).bytes(book));
    return renderer.draw(file, page);
  }

  private static double middle(Ink.Extent extent) {
    return (extent.left() + extent.right()) / 2;
  }

  private static Figure letters(double x, double y, Align align, double degrees) {
    return new Figure.Text(at(x, y), CAPITALS, LETTERS, align, degrees);
  }

  private static Figure line(double x1, double y1, double x2, double y2) {
    return Figure.Polyline.line(at(x1, y1), at(x2, y2), LineKind.THIN);
  }

  private static PaperPoint at(double x, double y) {
    return new PaperPoint(x, y);
  }
}
