package org.slatwright.exporter.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.export.ExportException;
import org.slatwright.testkit.Ink;

/**
 * A sheet drawn at 600 dots an inch by librsvg, a reader outside the project, and measured. Bounds
 * are 0.05 mm, a little over one pixel.
 */
class TrueSizeTest {

  private static final double BOUND = 0.05;
  private static final String LETTERS = "HHHH";
  private static final double CAPITALS = 10;
  private static final double WIDTH = Lettering.width(LETTERS, CAPITALS);

  @TempDir private static Path folder;
  private static Ink ink;

  @BeforeAll
  static void draw() throws ExportException, IOException, InterruptedException {
    ink =
        Renderer.LIBRSVG.draw(
            Exported.bytes(
                FigureSheet.of(
                    line(20, 100, 120, 100),
                    line(150, 40, 150, 140),
                    new Figure.Circle(at(215, 100), 50, LineKind.THIN),
                    letters(20, 180, Align.START, 0),
                    letters(150, 180, Align.MIDDLE, 0),
                    letters(280, 180, Align.END, 0),
                    letters(30, 20, Align.START, 90)),
                "outlines"),
            folder);
  }

  @Test
  void theSheetMeasures297By210() {
    assertEquals(297, ink.widthMm(), BOUND);
    assertEquals(210, ink.heightMm(), BOUND);
  }

  @Test
  void aLevelLineOf100MillimetresMeasures100AndLiesWhereItShould() {
    Ink.Stretch line = ink.along(100, 10, 130);
    assertEquals(100, line.length(), BOUND);
    assertEquals(70, line.middle(), BOUND);
  }

  @Test
  void anUprightLineOf100MillimetresMeasures100AndLiesWhereItShould() {
    Ink.Stretch line = ink.up(150, 30, 150);
    assertEquals(100, line.length(), BOUND);
    assertEquals(90, line.middle(), BOUND);
  }

  @Test
  void aThinLineIsAQuarterOfAMillimetreWide() {
    assertEquals(0.25, ink.up(70, 98, 102).length(), BOUND);
  }

  @Test
  void aCircleOf100MillimetresMeasures100BothWays() {
    double across = ink.along(100, 255, 275).middle() - ink.along(100, 155, 175).middle();
    double up = ink.up(215, 140, 160).middle() - ink.up(215, 40, 60).middle();
    assertEquals(100, across, BOUND);
    assertEquals(100, up, BOUND);
  }

  @Test
  void capitalsStandOnTheBaselineAsHighAsAskedFor() {
    Ink.Extent letters = ink.extent(10, 170, 80, 200);
    assertEquals(180, letters.bottom(), BOUND);
    assertEquals(180 + CAPITALS, letters.top(), BOUND);
  }

  /** The letter H has as much room on its left as on its right, so its ink is centred. */
  @Test
  void letteringLiesByItsStartItsMiddleAndItsEnd() {
    assertEquals(20 + WIDTH / 2, middle(ink.extent(10, 170, 80, 200)), BOUND);
    assertEquals(150, middle(ink.extent(110, 170, 190, 200)), BOUND);
    assertEquals(280 - WIDTH / 2, middle(ink.extent(220, 170, 290, 200)), BOUND);
  }

  @Test
  void letteringTurnedUprightRunsUpFromItsPlace() {
    Ink.Extent letters = ink.extent(10, 10, 60, 80);
    assertEquals(30, letters.right(), BOUND);
    assertEquals(30 - CAPITALS, letters.left(), BOUND);
    assertEquals(20 + WIDTH / 2, (letters.bottom() + letters.top()) / 2, BOUND);
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
