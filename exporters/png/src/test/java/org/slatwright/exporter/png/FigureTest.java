package org.slatwright.exporter.png;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Figure.Align;
import org.slatwright.api.drawing.Figure.Shade;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.testkit.Ink;

/** Every figure lies where the sheet says, as the JDK reads the picture. */
class FigureTest {

  private static final double MM_PER_INCH = 25.4;
  private static final int FINE = 150;
  private static final int COARSE = 75;

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(LineKind.class)
  void aLineIsAsWideAsItsKindOrADot(LineKind kind) throws IOException {
    for (int dotsPerInch : new int[] {COARSE, FINE}) {
      double dot = MM_PER_INCH / dotsPerInch;
      // In its first dash.
      Ink ink = ink(dotsPerInch, Figure.Polyline.line(at(50, 80), at(250, 80), kind));
      Ink.Stretch across = ink.up(51, 75, 85);
      assertEquals(
          Math.max(kind.widthMm(), dot), across.length(), 0.15 * dot, dotsPerInch + " dpi");
      assertEquals(80, across.middle(), 0.51 * dot, dotsPerInch + " dpi");
    }
  }

  /** Of ISO 128-2:2020, the part of each period that is drawn. */
  @ParameterizedTest
  @EnumSource(LineKind.class)
  void dashesAndGapsAreThoseOfItsKind(LineKind kind) throws IOException {
    List<Double> dashes = kind.dashesMm();
    double period = dashes.stream().mapToDouble(Double::doubleValue).sum();
    double drawn = 0;
    for (int i = 0; i < dashes.size(); i += 2) {
      drawn += Math.max(dashes.get(i), MM_PER_INCH / FINE);
    }
    Ink ink = ink(FINE, Figure.Polyline.line(at(20, 80), at(20 + 20 * length(period), 80), kind));
    Ink.Stretch along = ink.along(80, 10, 287);
    // Along one row of dots; a line of three dots and less is grey at its edges.
    double part = period == 0 ? 1 : drawn / period;
    assertEquals(part, along.length() / (20 * length(period)), 0.02);
  }

  private static double length(double period) {
    return period == 0 ? 5 : period;
  }

  @Test
  void aFillIsOfItsShadeAndCoversWhatLiesBeneath() throws IOException {
    byte[] file =
        Exported.file(
            Exported.sheet(
                square(50, 50, 40, Shade.INK),
                square(60, 60, 20, Shade.TINT),
                square(65, 65, 10, Shade.PAPER)),
            FINE);
    assertEquals(255, grey(file, 40, 70));
    assertEquals(0, grey(file, 55, 70));
    assertEquals(0xdd, grey(file, 62, 70), "the nearest of 16 greys");
    assertEquals(255, grey(file, 70, 70));
    Ink.Extent extent = ink(FINE, square(50, 50, 40, Shade.INK)).extent(40, 40, 120, 120);
    assertExtent(50, 50, 90, 90, extent, 0.01);
  }

  @Test
  void aCircleIsRoundItsMiddle() throws IOException {
    Figure circle = new Figure.Circle(at(100, 70), 20, LineKind.THIN);
    double half = LineKind.THIN.widthMm() / 2;
    assertExtent(
        80 - half, 50 - half, 120 + half, 90 + half, ink(FINE, circle).extent(1, 1, 290, 200), 0.1);
  }

  /** From 0° by 90° lies above and to the right; the same backwards ends below. */
  @Test
  void anArcTurnsCounterClockwiseFromTheXAxis() throws IOException {
    double half = LineKind.VISIBLE.widthMm() / 2;
    Figure up = new Figure.Arc(at(100, 70), 20, 0, 90, LineKind.VISIBLE);
    assertExtent(100, 70, 120, 90, ink(FINE, up).extent(1, 1, 290, 200), half + 0.1);
    Figure down = new Figure.Arc(at(100, 70), 20, 0, -90, LineKind.VISIBLE);
    assertExtent(100, 50, 120, 70, ink(FINE, down).extent(1, 1, 290, 200), half + 0.1);
  }

  @Test
  void aClosedPolylineReturnsToItsStartAndAnOpenOneDoesNot() throws IOException {
    List<PaperPoint> corners = List.of(at(50, 50), at(90, 50), at(90, 90));
    Ink open = ink(FINE, new Figure.Polyline(corners, false, LineKind.VISIBLE));
    Ink closed = ink(FINE, new Figure.Polyline(corners, true, LineKind.VISIBLE));
    assertEquals(0, open.up(70, 65, 75).length(), 0.01);
    assertTrue(closed.up(70, 65, 75).length() > LineKind.VISIBLE.widthMm());
  }

  /** Capitals with flat ends, in the font's own widths. */
  @ParameterizedTest
  @EnumSource(Align.class)
  void letteringIsAsHighAndAsLongAsTheLayoutReckoned(Align align) throws IOException {
    String text = "HHHHH";
    Ink.Extent extent =
        ink(FINE, new Figure.Text(at(150, 70), 5, text, align, 0)).extent(1, 1, 290, 200);
    double width = Lettering.width(text, 5);
    double left = 150 - align.part() * width;
    // The room beside a letter is a part of its width.
    assertExtent(left + 0.5, 70, left + width - 0.5, 75, extent, 0.3);
  }

  @Test
  void turnedLetteringRunsUp() throws IOException {
    Ink.Extent extent =
        ink(FINE, new Figure.Text(at(150, 70), 5, "HHHHH", Align.START, 90)).extent(1, 1, 290, 200);
    assertExtent(145, 70.5, 150, 70 + Lettering.width("HHHHH", 5) - 0.5, extent, 0.3);
  }

  /** 2.5 mm capitals are the smallest on a sheet: every stroke of theirs is seen. */
  @Test
  void smallLetteringIsSeenInASmallPicture() throws IOException {
    Ink ink = ink(COARSE, new Figure.Text(at(150, 70), 2.5, "HHHHH", Align.START, 0));
    double ofFive = ink.along(72, 149, 160).length();
    double fine =
        ink(FINE, new Figure.Text(at(150, 70), 2.5, "HHHHH", Align.START, 0))
            .along(72, 149, 160)
            .length();
    assertTrue(fine > 1);
    assertEquals(fine, ofFive, 0.15 * fine);
  }

  /** The sign is inked, and the letters beside it stand where they would. */
  @ParameterizedTest
  @ValueSource(strings = {"苗", "🌱", "⌀", "\n"})
  void whatTheFontLacksIsShownAsItsSign(String lacking) throws IOException {
    assertFalse(Lettering.has(lacking.codePointAt(0)));
    Ink ink = ink(FINE, new Figure.Text(at(100, 70), 5, lacking + "H", Align.START, 0));
    double room = Lettering.width(lacking, 5);
    Ink.Extent sign = ink.extent(100, 60, 100 + room, 80);
    assertTrue(sign.width() > 3 && sign.height() > 5, sign::toString);
    assertEquals(100 + room / 2, (sign.left() + sign.right()) / 2, 0.2);
    Ink.Extent letter = ink.extent(100 + room, 60, 120, 80);
    assertExtent(100 + room + 0.5, 70, 100 + room + Lettering.width("H", 5) - 0.5, 75, letter, 0.3);
  }

  private Ink ink(int dotsPerInch, Figure... figures) throws IOException {
    Path picture = folder.resolve("sheet.png");
    Files.write(picture, Exported.file(Exported.sheet(figures), dotsPerInch));
    return Ink.read(picture, dotsPerInch);
  }

  private static int grey(byte[] file, double x, double y) throws IOException {
    double perMm = FINE / MM_PER_INCH;
    int row = (int) ((210 - y) * perMm);
    return Greys.read(file).at((int) (x * perMm), row);
  }

  private static void assertExtent(
      double left, double bottom, double right, double top, Ink.Extent extent, double within) {
    assertEquals(left, extent.left(), within, "left");
    assertEquals(bottom, extent.bottom(), within, "bottom");
    assertEquals(right, extent.right(), within, "right");
    assertEquals(top, extent.top(), within, "top");
  }

  private static Figure square(double x, double y, double side, Shade shade) {
    PaperPoint corner = at(x, y);
    return new Figure.Fill(
        List.of(corner, corner.moved(side, 0), corner.moved(side, side), corner.moved(0, side)),
        shade);
  }

  private static PaperPoint at(double x, double y) {
    return new PaperPoint(x, y);
  }
}
