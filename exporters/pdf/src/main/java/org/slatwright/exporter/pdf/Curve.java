package org.slatwright.exporter.pdf;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;

/**
 * An arc as Bézier curves of at most an eighth of a circle, which stray from it by less than
 * 0.000005 of its radius; PDF has nothing closer.
 *
 * @param start where the first begins
 * @param pieces in order, each from where the one before it ends
 */
record Curve(PaperPoint start, List<Piece> pieces) {

  private static final double FULL_TURN = 2 * Math.PI;
  private static final double LONGEST = FULL_TURN / 8;

  /** Against an eighth that comes out longer by a rounding. */
  private static final double SLACK = 1e-9;

  /** One Bézier curve: its two handles and its end. */
  record Piece(PaperPoint first, PaperPoint second, PaperPoint end) {}

  static Curve of(Figure.Circle circle) {
    return arc(circle.centre(), circle.radius(), 0, FULL_TURN);
  }

  static Curve of(Figure.Arc arc) {
    return arc(
        arc.centre(),
        arc.radius(),
        Math.toRadians(arc.startDegrees()),
        Math.toRadians(arc.sweepDegrees()));
  }

  private static Curve arc(PaperPoint centre, double radius, double start, double sweep) {
    int count = Math.max(1, (int) Math.ceil(Math.abs(sweep) / LONGEST - SLACK));
    double step = sweep / count;
    return new Curve(
        at(centre, radius, start),
        IntStream.range(0, count)
            .mapToObj(i -> piece(centre, radius, start + i * step, step))
            .toList());
  }

  /** The handles lie on the tangents at both ends, as far off as lets the middle meet the arc. */
  private static Piece piece(PaperPoint centre, double radius, double from, double sweep) {
    double handle = radius * 4 / 3 * Math.tan(sweep / 4);
    double to = from + sweep;
    PaperPoint end = at(centre, radius, to);
    return new Piece(along(at(centre, radius, from), from, handle), along(end, to, -handle), end);
  }

  private static PaperPoint at(PaperPoint centre, double radius, double angle) {
    return centre.moved(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  /** On from a point of a circle along its tangent there. */
  private static PaperPoint along(PaperPoint point, double angle, double distance) {
    return point.moved(-distance * Math.sin(angle), distance * Math.cos(angle));
  }
}
