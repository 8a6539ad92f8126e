package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** The thin line with a zigzag in its middle at which a view breaks off (ISO 128-2). */
final class BreakLine {

  private static final double OVERRUN = 1.5;
  private static final double HALF_WIDE = 0.6;
  private static final double HALF_HIGH = 1;

  private BreakLine() {}

  /** Across a view that runs to the right. */
  static Figure upright(double x, double bottom, double top) {
    double middle = (bottom + top) / 2;
    return new Figure.Polyline(
        List.of(
            new PaperPoint(x, bottom - OVERRUN),
            new PaperPoint(x, middle - HALF_HIGH),
            new PaperPoint(x - HALF_WIDE, middle - HALF_HIGH / 3),
            new PaperPoint(x + HALF_WIDE, middle + HALF_HIGH / 3),
            new PaperPoint(x, middle + HALF_HIGH),
            new PaperPoint(x, top + OVERRUN)),
        false,
        LineKind.THIN);
  }

  /** Across a view that runs up. */
  static Figure level(double y, double left, double right) {
    double middle = (left + right) / 2;
    return new Figure.Polyline(
        List.of(
            new PaperPoint(left - OVERRUN, y),
            new PaperPoint(middle - HALF_HIGH, y),
            new PaperPoint(middle - HALF_HIGH / 3, y + HALF_WIDE),
            new PaperPoint(middle + HALF_HIGH / 3, y - HALF_WIDE),
            new PaperPoint(middle + HALF_HIGH, y),
            new PaperPoint(right + OVERRUN, y)),
        false,
        LineKind.THIN);
  }
}
