package org.slatwright.design.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

class PolygonsTest {

  @Property(tries = 100)
  void noChordLeavesItsCircleByMoreThanStated(
      @ForAll @DoubleRange(min = 0.2, max = 900) double diameter) {
    Length exact = Length.roundedMm(diameter);
    Polygon polygon = Polygons.of(new Outline.Circle(Point2.ORIGIN, exact));
    Coordinate[] points = polygon.getExteriorRing().getCoordinates();
    double radius = exact.inMm() / 2;
    for (int i = 1; i < points.length; i++) {
      double middle = Math.hypot(points[i].x + points[i - 1].x, points[i].y + points[i - 1].y) / 2;
      assertTrue(radius - middle <= Polygons.TOLERANCE_MM + 1e-9, () -> radius + ": " + middle);
    }
  }

  @Example
  void openingsAreCutOut() {
    Outline.Path plate = Outlines.rectangle(Point2.ORIGIN, Length.mm(60), Length.mm(40));
    Outline slot =
        Outlines.rectangle(new Point2(Length.mm(6), Length.mm(6)), Length.mm(6), Length.mm(10));
    assertEquals(60 * 40 - 60, Polygons.of(plate, List.of(slot)).getArea(), 1e-9);
  }
}
