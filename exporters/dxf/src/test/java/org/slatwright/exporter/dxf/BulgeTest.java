package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * A bulge is the tangent of a quarter of the included angle, negative when the arc goes clockwise
 * (DXF Reference, LWPOLYLINE, group code 42: "0 indicates a straight segment, and a bulge of 1 is a
 * semicircle"). The values are six-figure tangents.
 */
class BulgeTest {

  private static final double RADIUS_MM = 100;

  @ParameterizedTest
  @CsvSource({
    "30, 0.131652",
    "45, 0.198912",
    "60, 0.267949",
    "90, 0.414214",
    "180, 1.000000",
    "270, 2.414214"
  })
  void anArcBulgesByItsIncludedAngle(double degrees, double bulge) {
    assertEquals(bulge, Bulge.of(arc(degrees, true)), 5e-7);
    assertEquals(-bulge, Bulge.of(arc(-degrees, false)), 5e-7);
  }

  @Test
  void aLineDoesNotBulge() {
    assertEquals(0, Bulge.of(new Outline.Line(at(0), at(90))));
  }

  private static Outline.Arc arc(double degrees, boolean counterClockwise) {
    return new Outline.Arc(at(0), at(degrees), Point2.ORIGIN, counterClockwise);
  }

  private static Point2 at(double degrees) {
    double turn = Math.toRadians(degrees);
    return new Point2(
        Length.roundedMm(RADIUS_MM * Math.cos(turn)), Length.roundedMm(RADIUS_MM * Math.sin(turn)));
  }
}
