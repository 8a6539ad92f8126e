package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Point3;

/** Where brads or screws are driven in, seen from above. */
final class Crosses {

  /** Half of a cross where slats are small on paper, in mm. */
  static final double SMALL = 0.6;

  /** Half of a cross that is dimensioned, in mm. */
  static final double LARGE = 1.2;

  private Crosses() {}

  /** Its cross; nothing where it is not shown. */
  static List<Figure> at(Fastener fastener, RackView view, double half) {
    Point3 head = fastener.head();
    if (!view.across().shows(head.x().nanometres()) || !view.up().shows(head.y().nanometres())) {
      return List.of();
    }
    double x = view.x(head.x().nanometres());
    double y = view.y(head.y().nanometres());
    return List.of(
        Strokes.line(x - half, y - half, x + half, y + half, LineKind.THIN),
        Strokes.line(x - half, y + half, x + half, y - half, LineKind.THIN));
  }
}
