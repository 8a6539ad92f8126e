package org.slatwright.design.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.math.Vector2D;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * The corners that a round cutter cannot fill: between two straight edges, less than straight on
 * the side where the cutter runs. Relieved, such a corner lies on the edge of a circle that is cut
 * out beyond both edges, so that the square corner of another piece goes home ("dog-bone"; common
 * practice, no source).
 */
public final class InsideCorners {

  private final List<Outline.Edge> edges;
  private final Side side;

  private InsideCorners(Outline.Path outline, Side side) {
    this.edges = outline.edges();
    this.side = side;
  }

  /** How many there are. */
  public static int count(Outline.Path outline, Side side) {
    InsideCorners corners = new InsideCorners(outline, side);
    return (int) IntStream.range(0, corners.edges.size()).filter(corners::isInside).count();
  }

  /**
   * The outline with all of them relieved that have room for it along both edges.
   *
   * @param radius of the circles, a little more than the cutter's
   */
  public static Outline.Path relieved(Outline.Path outline, Side side, Length radius) {
    return new InsideCorners(outline, side).relieved(radius.inMm());
  }

  private Outline.Path relieved(double radius) {
    List<Outline.Edge> relieved = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Outline.Edge edge = edges.get(i);
      if (edge instanceof Outline.Line) {
        Point2 from = hasRoom(before(i), radius) ? along(i, reach(before(i), radius)) : edge.from();
        Point2 to = hasRoom(i, radius) ? along(i, length(i) - reach(i, radius)) : edge.to();
        relieved.add(new Outline.Line(from, to));
      } else {
        relieved.add(edge);
      }
      if (hasRoom(i, radius)) {
        relieved.add(circle(i, radius));
      }
    }
    return new Outline.Path(relieved);
  }

  /** The corner at the end of an edge. */
  private boolean isInside(int corner) {
    boolean straight =
        edges.get(corner) instanceof Outline.Line
            && edges.get(after(corner)) instanceof Outline.Line;
    double turn = Crossings.cross(way(corner), way(after(corner)));
    return straight && (side == Side.INSIDE ? turn : -turn) > Offset.ROUNDING_MM;
  }

  /** Whether the circles at both ends of both its edges stay apart. */
  private boolean hasRoom(int corner, double radius) {
    return isInside(corner) && isLongEnough(corner, radius) && isLongEnough(after(corner), radius);
  }

  private boolean isLongEnough(int edge, double radius) {
    double atStart = isInside(before(edge)) ? reach(before(edge), radius) : 0;
    double atEnd = isInside(edge) ? reach(edge, radius) : 0;
    return length(edge) > atStart + atEnd + Polygons.TOLERANCE_MM;
  }

  /** From a corner to where its circle leaves the edges: 2 r cos(half the angle between them). */
  private double reach(int corner, double radius) {
    return radius * inward(corner).length();
  }

  /** Twice the cosine of half the angle long, and in the middle between both edges. */
  private Vector2D inward(int corner) {
    return way(after(corner)).subtract(way(corner));
  }

  private Outline.Arc circle(int corner, double radius) {
    Vector2D at = Curve.of(edges.get(corner)).at(1);
    Vector2D centre = at.add(inward(corner).normalize().multiply(radius));
    return new Outline.Arc(
        along(corner, length(corner) - reach(corner, radius)),
        along(after(corner), reach(corner, radius)),
        new Point2(Length.roundedMm(centre.getX()), Length.roundedMm(centre.getY())),
        side == Side.INSIDE);
  }

  private Point2 along(int edge, double mm) {
    Vector2D at = Curve.of(edges.get(edge)).at(mm / length(edge));
    return new Point2(Length.roundedMm(at.getX()), Length.roundedMm(at.getY()));
  }

  private Vector2D way(int edge) {
    return Curve.of(edges.get(edge)).setsOut();
  }

  private double length(int edge) {
    return Curve.of(edges.get(edge)).length();
  }

  private int before(int edge) {
    return Math.floorMod(edge - 1, edges.size());
  }

  private int after(int edge) {
    return (edge + 1) % edges.size();
  }
}
