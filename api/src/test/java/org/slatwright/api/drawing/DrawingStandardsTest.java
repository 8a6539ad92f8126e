package org.slatwright.api.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

class DrawingStandardsTest {

  /** ISO 216: A4 is 210 × 297 mm, A3 297 × 420 mm. */
  @Test
  void isoPaperIsAsInIso216() {
    assertEquals(List.of(Length.mm(210), Length.mm(297)), sides(Paper.A4));
    assertEquals(List.of(Length.mm(297), Length.mm(420)), sides(Paper.A3));
  }

  /** ASME Y14.1, sizes A and B, from memory: 8 1/2 × 11 in and 11 × 17 in. */
  @Test
  void inchPaperIsAsInAsmeY141() {
    assertEquals(List.of(Length.roundedMm(215.9), Length.roundedMm(279.4)), sides(Paper.LETTER));
    assertEquals(List.of(Length.roundedMm(279.4), Length.roundedMm(431.8)), sides(Paper.TABLOID));
  }

  /** ISO 128-2: wide to narrow lines at least 2:1, widths of the series 0.13 … 2 mm, step √2. */
  @Test
  void lineWidthsAreOfTheIsoSeriesAndWideIsTwiceNarrow() {
    List<Double> series = List.of(0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0);
    for (LineKind line : LineKind.values()) {
      assertTrue(series.contains(line.widthMm()), line + " is " + line.widthMm());
    }
    assertTrue(LineKind.VISIBLE.widthMm() >= 2 * LineKind.HIDDEN.widthMm());
    assertTrue(LineKind.VISIBLE.widthMm() >= 2 * LineKind.THIN.widthMm());
  }

  /** ISO 128-2, from memory: dash 12 d, long dash 24 d, gap 3 d, dot at most 0.5 d. */
  @Test
  void dashesAreMultiplesOfTheLineWidth() {
    double d = LineKind.HIDDEN.widthMm();
    assertEquals(List.of(12 * d, 3 * d), LineKind.HIDDEN.dashesMm());
    assertEquals(List.of(24 * d, 3 * d, d / 2, 3 * d), LineKind.CENTRE.dashesMm());
    assertEquals(List.of(24 * d, 3 * d, d / 2, 3 * d, d / 2, 3 * d), LineKind.NEIGHBOUR.dashesMm());
  }

  private static List<Length> sides(Paper paper) {
    return List.of(paper.shortSide(), paper.longSide());
  }
}
