package org.slatwright.design.outline;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.math.Vector2D;

/** Where two curves meet. What runs along one another meets nowhere. */
final class Crossings {

  /** Squares closer to zero are taken for a touch. */
  private static final double TOUCH_MM2 = 1e-9;

  private Crossings() {}

  /** The points that both curves pass, ends included. */
  static List<Vector2D> of(Curve a, Curve b) {
    return onTheirLines(a, b).filter(point -> passes(a, point) && passes(b, point)).toList();
  }

  private static boolean passes(Curve curve, Vector2D point) {
    return curve.distance(point) < Offset.ROUNDING_MM;
  }

  private static Stream<Vector2D> onTheirLines(Curve a, Curve b) {
    if (a instanceof Curve.Bow one) {
      return b instanceof Curve.Bow other ? ofCircles(one, other) : withCircle(b, one);
    }
    return b instanceof Curve.Bow other ? withCircle(a, other) : ofLines(a, b);
  }

  private static Stream<Vector2D> ofLines(Curve a, Curve b) {
    double across = cross(a.setsOut(), b.setsOut());
    if (Math.abs(across) < Offset.ROUNDING_MM) {
      return Stream.empty();
    }
    double along = cross(b.at(0).subtract(a.at(0)), b.setsOut()) / across;
    return Stream.of(a.at(0).add(a.setsOut().multiply(along)));
  }

  private static Stream<Vector2D> withCircle(Curve line, Curve.Bow circle) {
    Vector2D way = line.setsOut();
    Vector2D foot = line.at(0).add(way.multiply(circle.centre().subtract(line.at(0)).dot(way)));
    double aside = foot.distance(circle.centre());
    return bothSides(foot, way, circle.radius() * circle.radius() - aside * aside);
  }

  private static Stream<Vector2D> ofCircles(Curve.Bow a, Curve.Bow b) {
    Vector2D between = b.centre().subtract(a.centre());
    double apart = between.length();
    if (apart < Offset.ROUNDING_MM) {
      return Stream.empty();
    }
    double along = (apart * apart + a.radius() * a.radius() - b.radius() * b.radius()) / 2 / apart;
    Vector2D way = between.divide(apart);
    Vector2D foot = a.centre().add(way.multiply(along));
    return bothSides(foot, way.rotateByQuarterCircle(1), a.radius() * a.radius() - along * along);
  }

  private static Stream<Vector2D> bothSides(Vector2D foot, Vector2D way, double square) {
    if (square < -TOUCH_MM2) {
      return Stream.empty();
    }
    if (square < TOUCH_MM2) {
      return Stream.of(foot);
    }
    Vector2D aside = way.multiply(Math.sqrt(square));
    return Stream.of(foot.add(aside), foot.subtract(aside));
  }

  static double cross(Vector2D a, Vector2D b) {
    return a.getX() * b.getY() - a.getY() * b.getX();
  }
}
