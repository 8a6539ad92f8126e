package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** Lines and boxes from coordinates in mm on the sheet. */
public final class Strokes {

  private Strokes() {}

  /** One straight line. */
  public static Figure line(double x1, double y1, double x2, double y2, LineKind kind) {
    return Figure.Polyline.line(new PaperPoint(x1, y1), new PaperPoint(x2, y2), kind);
  }

  /** The four sides of an upright box. */
  public static Figure box(double left, double bottom, double right, double top, LineKind kind) {
    return new Figure.Polyline(
        List.of(
            new PaperPoint(left, bottom),
            new PaperPoint(right, bottom),
            new PaperPoint(right, top),
            new PaperPoint(left, top)),
        true,
        kind);
  }
}
