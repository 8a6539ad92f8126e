package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** Hatching at 45° (ISO 128-3), each line ending on the edge of its box. */
final class Hatch {

  private static final double LEAST = 0.05;

  private Hatch() {}

  /** Lines that rise to the right, {@code pitch} mm apart along the edge. */
  static List<Figure> rising(PaperBox box, double pitch) {
    List<Figure> lines = new ArrayList<>();
    double last = box.right() - box.bottom();
    for (double c = first(box.left() - box.top(), pitch); c < last; c += pitch) {
      double from = Math.max(box.left(), box.bottom() + c);
      double to = Math.min(box.right(), box.top() + c);
      if (to - from > LEAST) {
        lines.add(Strokes.line(from, from - c, to, to - c, LineKind.THIN));
      }
    }
    return lines;
  }

  /** Lines that fall to the right. */
  static List<Figure> falling(PaperBox box, double pitch) {
    List<Figure> lines = new ArrayList<>();
    double last = box.right() + box.top();
    for (double c = first(box.left() + box.bottom(), pitch); c < last; c += pitch) {
      double from = Math.max(box.left(), c - box.top());
      double to = Math.min(box.right(), c - box.bottom());
      if (to - from > LEAST) {
        lines.add(Strokes.line(from, c - from, to, c - to, LineKind.THIN));
      }
    }
    return lines;
  }

  /** What of a line lies in a circle. */
  static List<Figure> inside(Figure line, Figure.Circle circle) {
    return parts(line, List.of(circle), true);
  }

  /** What of a line lies in none of some circles, which lie apart. */
  static List<Figure> outside(Figure line, List<Figure.Circle> circles) {
    return parts(line, circles, false);
  }

  private static List<Figure> parts(Figure line, List<Figure.Circle> circles, boolean within) {
    PaperPoint from = ((Figure.Polyline) line).points().get(0);
    PaperPoint to = ((Figure.Polyline) line).points().get(1);
    double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
    double alongX = (to.x() - from.x()) / length;
    double alongY = (to.y() - from.y()) / length;
    TreeSet<Double> ends = new TreeSet<>(List.of(0.0, length));
    for (Figure.Circle circle : circles) {
      double dx = circle.centre().x() - from.x();
      double dy = circle.centre().y() - from.y();
      double along = dx * alongX + dy * alongY;
      double aside = dx * alongY - dy * alongX;
      double square = circle.radius() * circle.radius() - aside * aside;
      if (square > 0) {
        ends.add(Math.min(Math.max(along - Math.sqrt(square), 0), length));
        ends.add(Math.min(Math.max(along + Math.sqrt(square), 0), length));
      }
    }
    List<Figure> parts = new ArrayList<>();
    for (Double end = ends.first(), next = ends.higher(end);
        next != null;
        end = next, next = ends.higher(end)) {
      PaperPoint middle = from.moved(alongX * (end + next) / 2, alongY * (end + next) / 2);
      boolean isWithin = circles.stream().anyMatch(circle -> holds(circle, middle));
      if (isWithin == within && next - end > LEAST) {
        parts.add(
            Figure.Polyline.line(
                from.moved(alongX * end, alongY * end),
                from.moved(alongX * next, alongY * next),
                LineKind.THIN));
      }
    }
    return parts;
  }

  private static boolean holds(Figure.Circle circle, PaperPoint point) {
    return Math.hypot(point.x() - circle.centre().x(), point.y() - circle.centre().y())
        < circle.radius();
  }

  private static double first(double least, double pitch) {
    return Math.ceil(least / pitch) * pitch;
  }
}
