package org.slatwright.api.model;

import java.util.List;
import org.slatwright.api.measure.Length;

/** A closed curve of straight lines and true arcs, real size: x to the right, y up. */
public sealed interface Outline {

  /** The same curve moved right by {@code dx} and up by {@code dy}. */
  Outline moved(Length dx, Length dy);

  /**
   * Edges end to end, the last one back to the first, never crossing. Counter-clockwise around
   * material, clockwise is not used: an opening is an outline of its own.
   *
   * @param edges at least two
   */
  record Path(List<Edge> edges) implements Outline {

    public Path {
      edges = List.copyOf(edges);
      if (edges.size() < 2) {
        throw new IllegalArgumentException("a path has at least two edges");
      }
      Point2 at = edges.get(edges.size() - 1).to();
      for (Edge edge : edges) {
        if (!edge.from().equals(at)) {
          throw new IllegalArgumentException("a path has a gap from " + at + " to " + edge.from());
        }
        at = edge.to();
      }
    }

    @Override
    public Path moved(Length dx, Length dy) {
      return new Path(edges.stream().map(edge -> edge.moved(dx, dy)).toList());
    }
  }

  /**
   * A full circle.
   *
   * @param diameter greater than zero
   */
  record Circle(Point2 centre, Length diameter) implements Outline {

    public Circle {
      if (!diameter.isPositive()) {
        throw new IllegalArgumentException("a circle's diameter must be > 0, was " + diameter);
      }
    }

    @Override
    public Circle moved(Length dx, Length dy) {
      return new Circle(centre.moved(dx, dy), diameter);
    }
  }

  /** One edge of a path. */
  sealed interface Edge {

    /** Where it starts. */
    Point2 from();

    /** Where it ends; not where it starts. */
    Point2 to();

    /** The same edge moved right by {@code dx} and up by {@code dy}. */
    Edge moved(Length dx, Length dy);
  }

  /** A straight edge. */
  record Line(Point2 from, Point2 to) implements Edge {

    public Line {
      requireApart(from, to);
    }

    @Override
    public Line moved(Length dx, Length dy) {
      return new Line(from.moved(dx, dy), to.moved(dx, dy));
    }
  }

  /**
   * A circular edge of less than a full turn.
   *
   * @param centre as far from {@code from} as from {@code to}, to the nanometre
   * @param counterClockwise whether it turns left on its way
   */
  record Arc(Point2 from, Point2 to, Point2 centre, boolean counterClockwise) implements Edge {

    private static final double ROUNDING_MM = 5e-6;

    public Arc {
      requireApart(from, to);
      if (Math.abs(centre.mmTo(from) - centre.mmTo(to)) > ROUNDING_MM) {
        throw new IllegalArgumentException(
            "an arc's ends are not as far from its centre: " + from + ", " + to + ", " + centre);
      }
    }

    /** In mm. */
    public double radiusMm() {
      return centre.mmTo(from);
    }

    /** The angle it turns through, in radians: positive counter-clockwise, within ±2π. */
    public double sweep() {
      double sweep = angle(to) - angle(from);
      if (counterClockwise && sweep <= 0) {
        return sweep + 2 * Math.PI;
      }
      return !counterClockwise && sweep >= 0 ? sweep - 2 * Math.PI : sweep;
    }

    /** The direction from the centre to a point of the arc, in radians from the x axis. */
    public double angle(Point2 point) {
      return Math.atan2(point.y().minus(centre.y()).inMm(), point.x().minus(centre.x()).inMm());
    }

    @Override
    public Arc moved(Length dx, Length dy) {
      return new Arc(from.moved(dx, dy), to.moved(dx, dy), centre.moved(dx, dy), counterClockwise);
    }
  }

  private static void requireApart(Point2 from, Point2 to) {
    if (from.equals(to)) {
      throw new IllegalArgumentException("an edge starts and ends at " + from);
    }
  }
}
