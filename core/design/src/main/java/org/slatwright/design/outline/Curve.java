package org.slatwright.design.outline;

import java.util.Optional;
import org.locationtech.jts.math.Vector2D;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/** A straight or circular edge while it is reckoned with, in mm, run through from 0 to 1. */
sealed interface Curve {

  /** The point at a share of its way, 0 to 1. */
  Vector2D at(double share);

  /** At which share of its way the foot of a point on its line lies; outside 0 to 1 beyond it. */
  double share(Vector2D point);

  /** The direction in which it leaves its start, of length 1. */
  Vector2D setsOut();

  /** The same points the other way round. */
  Curve reversed();

  /** Between two shares of its way. */
  Curve part(double from, double to);

  /** The curve that runs along on its right at that distance; empty where that shrinks to none. */
  Optional<Curve> onTheRight(double distance);

  double length();

  /** The direction in which it arrives at its end, of length 1. */
  default Vector2D arrives() {
    return reversed().setsOut().negate();
  }

  /** From a point to the nearest of its points. */
  default double distance(Vector2D point) {
    double share = share(point);
    return share > 0 && share < 1
        ? point.distance(at(share))
        : Math.min(point.distance(at(0)), point.distance(at(1)));
  }

  static Curve of(Outline.Edge edge) {
    if (edge instanceof Outline.Arc arc) {
      return new Bow(vector(arc.centre()), arc.radiusMm(), arc.angle(arc.from()), arc.sweep());
    }
    return new Straight(vector(edge.from()), vector(edge.to()));
  }

  private static Vector2D vector(Point2 point) {
    return new Vector2D(point.x().inMm(), point.y().inMm());
  }

  /** A straight edge. */
  record Straight(Vector2D from, Vector2D to) implements Curve {

    @Override
    public Vector2D at(double share) {
      return from.weightedSum(to, 1 - share);
    }

    @Override
    public double share(Vector2D point) {
      Vector2D way = to.subtract(from);
      return point.subtract(from).dot(way) / way.lengthSquared();
    }

    @Override
    public Vector2D setsOut() {
      return to.subtract(from).normalize();
    }

    @Override
    public Curve reversed() {
      return new Straight(to, from);
    }

    @Override
    public Curve part(double start, double end) {
      return new Straight(at(start), at(end));
    }

    @Override
    public Optional<Curve> onTheRight(double distance) {
      Vector2D aside = setsOut().rotateByQuarterCircle(-1).multiply(distance);
      return Optional.of(new Straight(from.add(aside), to.add(aside)));
    }

    @Override
    public double length() {
      return from.distance(to);
    }
  }

  /**
   * An arc.
   *
   * @param start direction of its start from the centre, in radians from the x axis
   * @param sweep that it turns through, positive counter-clockwise
   */
  record Bow(Vector2D centre, double radius, double start, double sweep) implements Curve {

    private static final double FULL_TURN = 2 * Math.PI;

    @Override
    public Vector2D at(double share) {
      double angle = start + sweep * share;
      return centre.add(new Vector2D(Math.cos(angle), Math.sin(angle)).multiply(radius));
    }

    /** A point in the gap belongs to the end that is nearer, so that rounding stays small. */
    @Override
    public double share(Vector2D point) {
      double turned = (point.subtract(centre).angle() - start) * Math.signum(sweep);
      double onward = turned - FULL_TURN * Math.floor(turned / FULL_TURN);
      double beyond = onward - Math.abs(sweep);
      return (beyond > FULL_TURN - onward ? onward - FULL_TURN : onward) / Math.abs(sweep);
    }

    @Override
    public Vector2D setsOut() {
      double across = start + Math.copySign(Math.PI / 2, sweep);
      return new Vector2D(Math.cos(across), Math.sin(across));
    }

    @Override
    public Curve reversed() {
      return new Bow(centre, radius, start + sweep, -sweep);
    }

    @Override
    public Curve part(double from, double to) {
      return new Bow(centre, radius, start + sweep * from, sweep * (to - from));
    }

    @Override
    public Optional<Curve> onTheRight(double distance) {
      double beside = radius + Math.copySign(distance, sweep);
      return beside > Offset.ROUNDING_MM
          ? Optional.of(new Bow(centre, beside, start, sweep))
          : Optional.empty();
    }

    @Override
    public double length() {
      return radius * Math.abs(sweep);
    }
  }
}
