package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** An upright rectangle on the sheet, its sides in mm. */
public record PaperBox(double left, double bottom, double right, double top) {

  double width() {
    return right - left;
  }

  double height() {
    return top - bottom;
  }

  double middleX() {
    return (left + right) / 2;
  }

  double middleY() {
    return (bottom + top) / 2;
  }

  /** Wider by {@code x} at either side and higher by {@code y}. */
  PaperBox grown(double x, double y) {
    return new PaperBox(left - x, bottom - y, right + x, top + y);
  }

  /** What of it lies in {@code other}. */
  PaperBox within(PaperBox other) {
    return new PaperBox(
        Math.max(left, other.left),
        Math.max(bottom, other.bottom),
        Math.min(right, other.right),
        Math.min(top, other.top));
  }

  /** Its four sides. */
  public Figure outline(LineKind line) {
    return Strokes.box(left, bottom, right, top, line);
  }

  /** Its area. */
  public Figure fill(Figure.Shade shade) {
    return new Figure.Fill(
        List.of(
            new PaperPoint(left, bottom),
            new PaperPoint(right, bottom),
            new PaperPoint(right, top),
            new PaperPoint(left, top)),
        shade);
  }
}
