package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;

/**
 * Shows what of a filled polygon lies in a window, edge by edge of the window (Sutherland and
 * Hodgman 1974). Parts that the window parts stay joined along its edge, which a fill without an
 * outline does not show.
 */
record FillClip(PaperBox window) {

  /** Less is a line that lies on the window's edge. */
  private static final double LEAST_AREA_MM2 = 1e-9;

  Optional<Figure> of(Figure.Fill fill) {
    List<PaperPoint> ring = fill.points();
    ring = cut(ring, point -> point.x() - window.left());
    ring = cut(ring, point -> window.right() - point.x());
    ring = cut(ring, point -> point.y() - window.bottom());
    ring = cut(ring, point -> window.top() - point.y());
    return area(ring) < LEAST_AREA_MM2
        ? Optional.empty()
        : Optional.of(new Figure.Fill(ring, fill.shade()));
  }

  /** What of the ring lies where {@code inside} is not negative. */
  private static List<PaperPoint> cut(List<PaperPoint> ring, ToDoubleFunction<PaperPoint> inside) {
    List<PaperPoint> left = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      PaperPoint from = ring.get(i);
      PaperPoint to = ring.get((i + 1) % ring.size());
      double before = inside.applyAsDouble(from);
      double after = inside.applyAsDouble(to);
      if (before >= 0) {
        left.add(from);
      }
      if (before * after < 0) {
        double part = before / (before - after);
        left.add(from.moved(part * (to.x() - from.x()), part * (to.y() - from.y())));
      }
    }
    return left;
  }

  private static double area(List<PaperPoint> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      PaperPoint from = ring.get(i);
      PaperPoint to = ring.get((i + 1) % ring.size());
      twice += from.x() * to.y() - to.x() * from.y();
    }
    return Math.abs(twice) / 2;
  }
}
