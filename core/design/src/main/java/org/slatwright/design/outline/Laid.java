package org.slatwright.design.outline;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * How a flat thing lies: turned about the origin, then moved.
 *
 * @param quarterTurns counter-clockwise, 0 to 3
 * @param dx to the right
 * @param dy up
 */
public record Laid(int quarterTurns, Length dx, Length dy) {

  /** Where a point of it comes to lie. */
  public Point2 of(Point2 point) {
    Point2 turned =
        switch (quarterTurns) {
          case 0 -> point;
          case 1 -> new Point2(point.y().negated(), point.x());
          case 2 -> new Point2(point.x().negated(), point.y().negated());
          default -> new Point2(point.y(), point.x().negated());
        };
    return turned.moved(dx, dy);
  }

  /** Where an outline of it comes to lie. */
  public Outline of(Outline outline) {
    if (outline instanceof Outline.Circle circle) {
      return new Outline.Circle(of(circle.centre()), circle.diameter());
    }
    return new Outline.Path(((Outline.Path) outline).edges().stream().map(this::of).toList());
  }

  private Outline.Edge of(Outline.Edge edge) {
    return edge instanceof Outline.Arc arc
        ? new Outline.Arc(of(arc.from()), of(arc.to()), of(arc.centre()), arc.counterClockwise())
        : new Outline.Line(of(edge.from()), of(edge.to()));
  }
}
