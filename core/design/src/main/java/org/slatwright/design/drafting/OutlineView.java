package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * Draws outlines at a place on the sheet, arcs as arcs.
 *
 * @param left where x = 0 of the outlines lies, in mm on the sheet
 * @param bottom where y = 0 lies
 */
public record OutlineView(Scale scale, double left, double bottom) {

  private static final double AXIS_OVERRUN = 1.5;

  double x(Point2 point) {
    return left + point.x().inMm() * scale.factor();
  }

  double y(Point2 point) {
    return bottom + point.y().inMm() * scale.factor();
  }

  /** Its edges, as visible ones. */
  public List<Figure> figures(Outline outline) {
    if (outline instanceof Outline.Circle circle) {
      return List.of(
          new Figure.Circle(
              at(circle.centre()),
              circle.diameter().inMm() / 2 * scale.factor(),
              LineKind.VISIBLE));
    }
    return ((Outline.Path) outline).edges().stream().map(this::edge).toList();
  }

  /** A hole and the two centre lines that cross in it. */
  List<Figure> bore(Outline.Circle circle) {
    List<Figure> figures = new ArrayList<>(figures(circle));
    PaperPoint centre = at(circle.centre());
    double reach = circle.diameter().inMm() / 2 * scale.factor() + AXIS_OVERRUN;
    figures.add(
        Figure.Polyline.line(centre.moved(-reach, 0), centre.moved(reach, 0), LineKind.CENTRE));
    figures.add(
        Figure.Polyline.line(centre.moved(0, -reach), centre.moved(0, reach), LineKind.CENTRE));
    return figures;
  }

  Figure edge(Outline.Edge edge) {
    if (edge instanceof Outline.Arc arc) {
      return new Figure.Arc(
          at(arc.centre()),
          arc.radiusMm() * scale.factor(),
          Math.toDegrees(arc.angle(arc.from())),
          Math.toDegrees(arc.sweep()),
          LineKind.VISIBLE);
    }
    return Figure.Polyline.line(at(edge.from()), at(edge.to()), LineKind.VISIBLE);
  }

  private PaperPoint at(Point2 point) {
    return new PaperPoint(x(point), y(point));
  }
}
