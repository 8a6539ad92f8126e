package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** An upright rectangle on the sheet, its sides in mm. */
public record PaperBox(double left, double bottom, double right, double top) {

  private static final double ROUNDING = 1e-9;

  /** In mm. */
  public double width() {
    return right - left;
  }

  /** In mm. */
  public double height() {
    return top - bottom;
  }

  /** Of its upright middle line. */
  public double middleX() {
    return (left + right) / 2;
  }

  /** Of its level middle line. */
  public double middleY() {
    return (bottom + top) / 2;
  }

  /** Wider by {@code x} at either side and higher by {@code y}. */
  public PaperBox grown(double x, double y) {
    return new PaperBox(left - x, bottom - y, right + x, top + y);
  }

  /** What of it lies in {@code other}. */
  public PaperBox within(PaperBox other) {
    return new PaperBox(
        Math.max(left, other.left),
        Math.max(bottom, other.bottom),
        Math.min(right, other.right),
        Math.min(top, other.top));
  }

  /** Whether a place lies in it or on its edge; what doubles lose does not count. */
  public boolean contains(PaperPoint point) {
    return point.x() >= left - ROUNDING
        && point.x() <= right + ROUNDING
        && point.y() >= bottom - ROUNDING
        && point.y() <= top + ROUNDING;
  }

  /** Whether all of {@code other} lies in it. */
  public boolean contains(PaperBox other) {
    return contains(new PaperPoint(other.left, other.bottom))
        && contains(new PaperPoint(other.right, other.top));
  }

  /** Whether the two share more than an edge. */
  public boolean meets(PaperBox other) {
    return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
  }

  /** The least box around both. */
  public PaperBox with(PaperBox other) {
    return new PaperBox(
        Math.min(left, other.left),
        Math.min(bottom, other.bottom),
        Math.max(right, other.right),
        Math.max(top, other.top));
  }

  /** Its four sides. */
  public Figure outline(LineKind line) {
    return Strokes.box(left, bottom, right, top, line);
  }

  /** All of it, filled. */
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
