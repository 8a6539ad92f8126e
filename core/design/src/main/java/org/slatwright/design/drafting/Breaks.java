package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** Where a piece is cut off on the drawing and runs on: a narrow line with a zigzag (ISO 128-2). */
final class Breaks {

  private static final double BEYOND = 1.2;
  private static final double TOOTH = 1;

  private Breaks() {}

  static Figure level(double left, double right, double y) {
    double middle = (left + right) / 2;
    return line(
        new PaperPoint(left - BEYOND, y),
        new PaperPoint(middle - TOOTH, y),
        new PaperPoint(middle - TOOTH / 2, y + TOOTH),
        new PaperPoint(middle + TOOTH / 2, y - TOOTH),
        new PaperPoint(middle + TOOTH, y),
        new PaperPoint(right + BEYOND, y));
  }

  static Figure upright(double x, double bottom, double top) {
    double middle = (bottom + top) / 2;
    return line(
        new PaperPoint(x, bottom - BEYOND),
        new PaperPoint(x, middle - TOOTH),
        new PaperPoint(x + TOOTH, middle - TOOTH / 2),
        new PaperPoint(x - TOOTH, middle + TOOTH / 2),
        new PaperPoint(x, middle + TOOTH),
        new PaperPoint(x, top + BEYOND));
  }

  private static Figure line(PaperPoint... points) {
    return new Figure.Polyline(List.of(points), false, LineKind.THIN);
  }
}
