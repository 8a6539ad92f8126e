package org.slatwright.exporter.figures;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;

/**
 * Figures as shapes in SVG's coordinates.
 *
 * @param flip of their paper
 */
record PaperShapes(PaperFlip flip) {

  Shape of(Figure.Polyline polyline) {
    List<PaperPoint> points = polyline.points();
    if (points.size() == 2) {
      PaperPoint from = points.get(0);
      PaperPoint to = points.get(1);
      return new Line2D.Double(flip.x(from), flip.y(from), flip.x(to), flip.y(to));
    }
    return path(points, polyline.closed());
  }

  Shape of(Figure.Circle circle) {
    double diameter = 2 * circle.radius();
    return new Ellipse2D.Double(
        flip.x(circle.centre()) - circle.radius(),
        flip.y(circle.centre()) - circle.radius(),
        diameter,
        diameter);
  }

  /** Java's arcs already turn counter-clockwise where y runs down. */
  Shape of(Figure.Arc arc) {
    Arc2D shape = new Arc2D.Double();
    shape.setArcByCenter(
        flip.x(arc.centre()),
        flip.y(arc.centre()),
        arc.radius(),
        arc.startDegrees(),
        arc.sweepDegrees(),
        Arc2D.OPEN);
    return shape;
  }

  Shape of(Figure.Fill fill) {
    return path(fill.points(), true);
  }

  private Path2D path(List<PaperPoint> points, boolean closed) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    PaperPoint first = points.get(0);
    path.moveTo(flip.x(first), flip.y(first));
    points.subList(1, points.size()).forEach(to -> path.lineTo(flip.x(to), flip.y(to)));
    if (closed) {
      path.closePath();
    }
    return path;
  }
}
