package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/**
 * The upright rectangle that just holds something flat, from its lower left corner to its upper
 * right.
 *
 * @param low the corner with the least coordinates
 * @param high the corner with the greatest
 */
public record Extent(Point2 low, Point2 high) {

  /** From left to right. */
  public Length width() {
    return high.x().minus(low.x());
  }

  /** From the lowest point to the highest. */
  public Length height() {
    return high.y().minus(low.y());
  }

  /** The extent of an outline, with the bulge of its arcs; exact for whole and quarter circles. */
  public static Extent of(Outline outline) {
    if (outline instanceof Outline.Circle circle) {
      return square(circle.centre(), circle.diameter().half());
    }
    return ((Outline.Path) outline)
        .edges().stream().map(Extent::of).reduce(Extent::around).orElseThrow();
  }

  /** The extent of a single point. */
  public static Extent at(Point2 point) {
    return new Extent(point, point);
  }

  /** The smallest extent around both. */
  public Extent around(Extent other) {
    return new Extent(
        new Point2(Length.min(low.x(), other.low.x()), Length.min(low.y(), other.low.y())),
        new Point2(Length.max(high.x(), other.high.x()), Length.max(high.y(), other.high.y())));
  }

  private static Extent of(Outline.Edge edge) {
    Extent ends = at(edge.from()).around(at(edge.to()));
    return edge instanceof Outline.Arc arc ? ends.around(bulge(arc)) : ends;
  }

  private static Extent bulge(Outline.Arc arc) {
    Length radius = radius(arc);
    Extent extent = at(arc.from());
    for (int quarter = 0; quarter < 4; quarter++) {
      Point2 outermost = onCircle(arc.centre(), radius, quarter);
      if (passes(arc, quarter * Math.PI / 2)) {
        extent = extent.around(at(outermost));
      }
    }
    return extent;
  }

  private static Length radius(Outline.Arc arc) {
    Length dx = arc.from().x().minus(arc.centre().x());
    Length dy = arc.from().y().minus(arc.centre().y());
    boolean square = dx.isZero() || dy.isZero();
    return square ? dx.plus(dy).abs() : Length.roundedMm(arc.radiusMm());
  }

  private static Point2 onCircle(Point2 centre, Length radius, int quarter) {
    return switch (quarter) {
      case 0 -> centre.moved(radius, Length.ZERO);
      case 1 -> centre.moved(Length.ZERO, radius);
      case 2 -> centre.moved(radius.negated(), Length.ZERO);
      default -> centre.moved(Length.ZERO, radius.negated());
    };
  }

  private static boolean passes(Outline.Arc arc, double angle) {
    double turned = angle - arc.angle(arc.from());
    double fullTurn = 2 * Math.PI;
    double left = turned - fullTurn * Math.floor(turned / fullTurn);
    return arc.counterClockwise() ? left < arc.sweep() : left - fullTurn > arc.sweep();
  }

  private static Extent square(Point2 centre, Length radius) {
    return new Extent(
        centre.moved(radius.negated(), radius.negated()), centre.moved(radius, radius));
  }
}
