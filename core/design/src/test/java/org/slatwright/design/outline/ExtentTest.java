package org.slatwright.design.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/** Checked against the envelope that JTS gives the same outline. */
class ExtentTest {

  private static final Point2 CENTRE = new Point2(Length.mm(50), Length.mm(40));

  @Example
  void aCircleReachesItsRadiusEachWay() {
    Extent extent = Extent.of(new Outline.Circle(CENTRE, Length.mm(30)));
    assertEquals(new Point2(Length.mm(35), Length.mm(25)), extent.low());
    assertEquals(new Point2(Length.mm(65), Length.mm(55)), extent.high());
  }

  @Example
  void aHalfRoundEndBulgesByItsRadius() {
    Outline.Arc end = new Outline.Arc(point(50, 10), point(50, 30), point(50, 20), true);
    Extent extent =
        Extent.of(new Outline.Path(List.of(end, new Outline.Line(end.to(), end.from()))));
    assertEquals(point(50, 10), extent.low());
    assertEquals(point(60, 30), extent.high());
  }

  @Property(tries = 200)
  void anyArcIsHeldWithItsBulge(
      @ForAll @DoubleRange(min = 0, max = 6.28) double from,
      @ForAll @DoubleRange(min = 0.1, max = 6.18) double sweep,
      @ForAll boolean counterClockwise) {
    Point2 start = onCircle(from);
    Point2 end = onCircle(from + (counterClockwise ? sweep : -sweep));
    Outline.Path path =
        new Outline.Path(
            List.of(
                new Outline.Arc(start, end, CENTRE, counterClockwise),
                new Outline.Line(end, start)));
    Envelope drawn = Polygons.of(path).getEnvelopeInternal();
    Extent extent = Extent.of(path);
    double tolerance = 2 * Polygons.TOLERANCE_MM;
    assertEquals(drawn.getMinX(), extent.low().x().inMm(), tolerance);
    assertEquals(drawn.getMinY(), extent.low().y().inMm(), tolerance);
    assertEquals(drawn.getWidth(), extent.width().inMm(), tolerance);
    assertEquals(drawn.getHeight(), extent.height().inMm(), tolerance);
  }

  private static Point2 onCircle(double angle) {
    return new Point2(
        Length.roundedMm(50 + 20 * Math.cos(angle)), Length.roundedMm(40 + 20 * Math.sin(angle)));
  }

  private static Point2 point(long x, long y) {
    return new Point2(Length.mm(x), Length.mm(y));
  }
}
