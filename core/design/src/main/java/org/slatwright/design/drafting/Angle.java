package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Unit;

/**
 * How views are arranged around the front view (ISO 5456-2): in first angle the view from above
 * lies below and the view from the left lies to the right; in third angle the view from above lies
 * above and the view from the right lies to the right.
 */
enum Angle {
  FIRST("First angle", Projection.LEFT),
  THIRD("Third angle", Projection.RIGHT);

  private final String words;
  private final Projection side;

  Angle(String words, Projection side) {
    this.words = words;
    this.side = side;
  }

  /** First angle is usual where drawings are metric, third angle where they are in inches. */
  static Angle of(Unit units) {
    return units == Unit.MM ? FIRST : THIRD;
  }

  String words() {
    return words;
  }

  /** The side view that stands to the right of the front view. */
  Projection side() {
    return side;
  }

  /** The graphical symbol: a truncated cone and its end view, about 12 mm wide, in mm on paper. */
  List<Figure> symbol(double centreX, double centreY) {
    double cone = this == FIRST ? centreX - 3.6 : centreX + 3.6;
    double circles = this == FIRST ? centreX + 3.6 : centreX - 3.6;
    // The small end points away from the circles in first angle, and towards them in third.
    double small = cone - 2.6;
    double big = cone + 2.6;
    return List.of(
        new Figure.Polyline(
            List.of(
                new PaperPoint(small, centreY - 1.1),
                new PaperPoint(big, centreY - 2.2),
                new PaperPoint(big, centreY + 2.2),
                new PaperPoint(small, centreY + 1.1)),
            true,
            LineKind.VISIBLE),
        new Figure.Circle(new PaperPoint(circles, centreY), 1.1, LineKind.VISIBLE),
        new Figure.Circle(new PaperPoint(circles, centreY), 2.2, LineKind.VISIBLE),
        Figure.Polyline.line(
            new PaperPoint(cone - 3.2, centreY),
            new PaperPoint(cone + 3.2, centreY),
            LineKind.CENTRE),
        Figure.Polyline.line(
            new PaperPoint(circles - 2.8, centreY),
            new PaperPoint(circles + 2.8, centreY),
            LineKind.CENTRE),
        Figure.Polyline.line(
            new PaperPoint(circles, centreY - 2.8),
            new PaperPoint(circles, centreY + 2.8),
            LineKind.CENTRE));
  }
}
