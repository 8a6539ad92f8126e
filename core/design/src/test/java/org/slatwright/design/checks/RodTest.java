package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Point3;

/** Against points all over one rod, each measured to the other: textbook geometry of a cylinder. */
class RodTest {

  private static final int ROUND = 36;
  private static final int ALONG = 120;
  private static final int OUT = 4;

  @Test
  void aShankBesideADowelIsAsFarAsItsMiddleLessBothRadii() {
    Rod dowel = rod(0, 0, 0, Direction.PLUS_Y, 40, 10);

    assertEquals(2.4, rod(8, 20, 30, Direction.MINUS_Z, 60, 1.2).woodTo(dowel), 1e-9);
    assertEquals(-0.6, rod(5, 20, 30, Direction.MINUS_Z, 60, 1.2).woodTo(dowel), 1e-9);
    assertEquals(3, rod(0, 20, 30, Direction.MINUS_Z, 22, 1.2).woodTo(dowel), 1e-9);
    assertEquals(1.4, rod(0, 42, 30, Direction.MINUS_Z, 60, 1.2).woodTo(dowel), 1e-9);
  }

  @Test
  void dowelsFromBothEndsAreAsFarAsTheirEnds() {
    Rod front = rod(0, 0, 0, Direction.PLUS_Y, 37, 10);

    assertEquals(1, front.woodTo(rod(0, 75, 0, Direction.MINUS_Y, 37, 10)), 1e-9);
    assertEquals(-1, front.woodTo(rod(0, 73, 0, Direction.MINUS_Y, 37, 10)), 1e-9);
  }

  @Property(tries = 300)
  void noPointOfARodIsNearerToAnotherThanTheWoodBetween(
      @ForAll("rods") Rod one, @ForAll("rods") Rod other) {
    double nearest = nearest(one, other);
    double wood = one.woodTo(other);

    assertTrue(wood <= nearest + 1e-6 || nearest == 0 && wood <= 1e-6, wood + " " + nearest);
    if (wood > 0) {
      double step = one.length().inMm() / ALONG + one.diameter().inMm() / OUT;
      double square = 0.21 * one.diameter().inMm();
      assertTrue(nearest <= wood + step + square, wood + " " + nearest);
    }
  }

  @Provide
  Arbitrary<Rod> rods() {
    Arbitrary<Integer> place = Arbitraries.integers().between(-30, 30);
    return Combinators.combine(
            place,
            place,
            place,
            Arbitraries.of(Direction.values()),
            Arbitraries.integers().between(1, 50),
            Arbitraries.integers().between(1, 12))
        .as(RodTest::rod);
  }

  private static Rod rod(int x, int y, int z, Direction way, int length, double diameter) {
    Point3 from = new Point3(Length.mm(x), Length.mm(y), Length.mm(z));
    return new Rod(from, way, Length.mm(length), Length.roundedMm(diameter));
  }

  private static double nearest(Rod one, Rod other) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= ALONG; i++) {
      for (int j = 0; j < ROUND; j++) {
        for (int k = 0; k <= OUT; k++) {
          nearest = Math.min(nearest, distance(point(one, i, j, k), other));
        }
      }
    }
    return nearest;
  }

  private static double[] point(Rod rod, int i, int j, int k) {
    double angle = 2 * Math.PI * j / ROUND;
    double radius = rod.diameter().inMm() / 2 * k / OUT;
    double along = rod.length().inMm() * i / ALONG * rod.way().sign();
    double[] point = at(rod.from());
    int axis = rod.axis().ordinal();
    point[axis] += along;
    point[(axis + 1) % 3] += radius * Math.cos(angle);
    point[(axis + 2) % 3] += radius * Math.sin(angle);
    return point;
  }

  private static double distance(double[] point, Rod rod) {
    int axis = rod.axis().ordinal();
    double[] from = at(rod.from());
    double end = from[axis] + rod.length().inMm() * rod.way().sign();
    double low = Math.min(from[axis], end);
    double high = Math.max(from[axis], end);
    double along = Math.max(0, Math.max(low - point[axis], point[axis] - high));
    double across =
        Math.hypot(
            point[(axis + 1) % 3] - from[(axis + 1) % 3],
            point[(axis + 2) % 3] - from[(axis + 2) % 3]);
    return Math.hypot(along, Math.max(0, across - rod.diameter().inMm() / 2));
  }

  private static double[] at(Point3 point) {
    double[] at = new double[3];
    for (Axis axis : Axis.values()) {
      at[axis.ordinal()] = point.along(axis).inMm();
    }
    return at;
  }
}
