package org.slatwright.design.framing;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Point3;

/**
 * A round solid or hole along one axis of the rack, as an exporter of solids would build it. Spans
 * are in half nanometres, so that the middle of every length is exact.
 */
record Cylinder(Axis axis, Span x, Span y, Span z) {

  /** The hole that a drill leaves. */
  static Cylinder of(Bore bore) {
    Point3 end = bore.mouth().moved(bore.inward(), bore.depth());
    return along(bore.inward().axis(), bore.mouth(), end, bore.diameter());
  }

  /** The shank of a brad or screw, its head flush. */
  static Cylinder of(Fastener fastener) {
    Point3 tip = fastener.head().moved(fastener.inward(), fastener.length());
    return along(fastener.inward().axis(), fastener.head(), tip, fastener.diameter());
  }

  /** The rod that fills a box from end to end. */
  static Cylinder filling(Box box, Axis axis) {
    return new Cylinder(axis, Span.of(box, Axis.X), Span.of(box, Axis.Y), Span.of(box, Axis.Z));
  }

  private static Cylinder along(Axis axis, Point3 from, Point3 to, Length diameter) {
    return new Cylinder(
        axis,
        span(Axis.X, axis, from, to, diameter),
        span(Axis.Y, axis, from, to, diameter),
        span(Axis.Z, axis, from, to, diameter));
  }

  private static Span span(Axis of, Axis axis, Point3 from, Point3 to, Length diameter) {
    long a = 2 * from.along(of).nanometres();
    long b = 2 * to.along(of).nanometres();
    long radius = of == axis ? 0 : diameter.nanometres();
    return new Span(Math.min(a, b) - radius, Math.max(a, b) + radius);
  }

  Span span(Axis of) {
    return switch (of) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  /** Whether no part of it stands out of {@code box}. */
  boolean isInside(Box box) {
    return isInside(filling(box, axis), 0);
  }

  /** Whether no part of it stands out of another's box by more than {@code halfNanometres}. */
  boolean isInside(Cylinder other, long halfNanometres) {
    for (Axis each : Axis.values()) {
      Span mine = span(each);
      Span room = other.span(each);
      if (mine.low < room.low - halfNanometres || mine.high > room.high + halfNanometres) {
        return false;
      }
    }
    return true;
  }

  /** How far two parallel axes are apart along {@code across}, in half nanometres. */
  long offset(Cylinder other, Axis across) {
    return Math.abs(span(across).middle() - other.span(across).middle());
  }

  /** How much wood lies between the walls of two parallel ones, in half nanometres. */
  double wallTo(Cylinder other) {
    double square = 0;
    long radii = 0;
    for (Axis each : Axis.values()) {
      if (each != axis) {
        square += Math.pow(offset(other, each), 2);
        radii = (span(each).size() + other.span(each).size()) / 2;
      }
    }
    boolean pass = !span(axis).overlaps(other.span(axis));
    return pass ? Double.POSITIVE_INFINITY : Math.sqrt(square) - radii;
  }

  /**
   * How far this one, upright, stands clear of {@code lying}, which runs along y; in half
   * nanometres, and never more than there is. A shank beside the whole length of a dowel is seen
   * along the dowel: a rectangle beside a disc.
   */
  double clearOf(Cylinder lying) {
    if (axis != Axis.Z || lying.axis != Axis.Y) {
      throw new IllegalArgumentException("reckoned for an upright one and one along y alone");
    }
    if (!y.overlaps(lying.y)) {
      return Math.max(y.low - lying.y.high, lying.y.low - y.high);
    }
    double beside = x.distanceTo(lying.x.middle());
    double above = z.distanceTo(lying.z.middle());
    return Math.hypot(beside, above) - lying.x.size() / 2.0;
  }

  /** From one coordinate to another, in half nanometres. */
  record Span(long low, long high) {

    static Span of(Box box, Axis axis) {
      return new Span(
          2 * box.low().along(axis).nanometres(), 2 * box.high().along(axis).nanometres());
    }

    long middle() {
      return (low + high) / 2;
    }

    long size() {
      return high - low;
    }

    boolean overlaps(Span other) {
      return low < other.high && other.low < high;
    }

    long distanceTo(long point) {
      return Math.max(0, Math.max(low - point, point - high));
    }
  }
}
