package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** Filled arrows, about 2.5 mm long and 20° wide (ISO 129-1). */
final class Arrows {

  private static final double LENGTH = 2.5;
  private static final double HALF_WIDTH = 0.45;

  private Arrows() {}

  /** A level line that ends in an arrow at {@code to}. */
  static List<Figure> level(double from, double to, double y) {
    return to(List.of(new PaperPoint(from, y), new PaperPoint(to, y)));
  }

  /** A leader with bends that ends in an arrow, as one does on an outline (ISO 128-2). */
  static List<Figure> to(List<PaperPoint> points) {
    PaperPoint tip = points.get(points.size() - 1);
    PaperPoint last = points.get(points.size() - 2);
    double length = Math.hypot(tip.x() - last.x(), tip.y() - last.y());
    double alongX = (last.x() - tip.x()) / length;
    double alongY = (last.y() - tip.y()) / length;
    PaperPoint back = tip.moved(LENGTH * alongX, LENGTH * alongY);
    return List.of(
        new Figure.Polyline(points, false, LineKind.THIN),
        new Figure.Fill(
            List.of(
                tip,
                back.moved(-HALF_WIDTH * alongY, HALF_WIDTH * alongX),
                back.moved(HALF_WIDTH * alongY, -HALF_WIDTH * alongX)),
            Figure.Shade.INK));
  }
}
