package org.slatwright.design.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.design.outline.Outlines.Corner;

/** Areas are checked with JTS against the formulas of plane geometry. */
class OutlinesTest {

  private static final Length R = Length.mm(3);

  @Example
  void aRoundedRectangleHasFourLinesAndFourTrueArcs() {
    Outline.Path path = Outlines.roundedRectangle(Length.mm(60), Length.mm(40), R);
    assertEquals(4, path.edges().stream().filter(Outline.Line.class::isInstance).count());
    assertEquals(
        List.of(Math.PI / 2, Math.PI / 2, Math.PI / 2, Math.PI / 2),
        path.edges().stream()
            .filter(Outline.Arc.class::isInstance)
            .map(edge -> ((Outline.Arc) edge).sweep())
            .toList());
  }

  @Example
  void sidesThatAreAllCornerMakeACircle() {
    Outline.Path path = Outlines.roundedRectangle(Length.mm(6), Length.mm(6), R);
    assertTrue(path.edges().stream().allMatch(Outline.Arc.class::isInstance));
    assertEquals(Math.PI * 9, Polygons.of(path).getArea(), 0.02);
  }

  @Property(tries = 100)
  void roundingTakesFourMinusPiSquareRadiiOffARectangle(
      @ForAll @LongRange(min = 20, max = 900) long width,
      @ForAll @LongRange(min = 20, max = 900) long height,
      @ForAll @LongRange(min = 0, max = 10) long radius) {
    Outline.Path path =
        Outlines.roundedRectangle(Length.mm(width), Length.mm(height), Length.mm(radius));
    Polygon polygon = Polygons.of(path);
    double expected = width * height - (4 - Math.PI) * radius * radius;
    assertTrue(polygon.isValid());
    assertEquals(expected, polygon.getArea(), 2 * Math.PI * radius * Polygons.TOLERANCE_MM + 1e-6);
    assertEquals(
        new Extent(Point2.ORIGIN, new Point2(Length.mm(width), Length.mm(height))),
        Extent.of(path));
  }

  @Example
  void anInsideCornerIsFilledAndAnOutsideCornerCut() {
    Outline.Path angle =
        Outlines.rightAngled(
            List.of(
                Corner.sharp(Length.ZERO, Length.ZERO),
                Corner.round(Length.mm(40), Length.ZERO, R),
                Corner.sharp(Length.mm(40), Length.mm(10)),
                Corner.round(Length.mm(10), Length.mm(10), R),
                Corner.sharp(Length.mm(10), Length.mm(30)),
                Corner.sharp(Length.ZERO, Length.mm(30))));
    List<Boolean> turns =
        angle.edges().stream()
            .filter(Outline.Arc.class::isInstance)
            .map(edge -> ((Outline.Arc) edge).counterClockwise())
            .toList();
    assertEquals(List.of(true, false), turns);
    double cutAndFilledAlike = 40 * 10 + 10 * 20;
    assertEquals(cutAndFilledAlike, Polygons.of(angle).getArea(), 0.01);
  }

  @Example
  void aSlantingEdgeIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Outlines.rightAngled(
                List.of(
                    Corner.sharp(Length.ZERO, Length.ZERO),
                    Corner.sharp(Length.mm(40), Length.mm(1)),
                    Corner.sharp(Length.mm(40), Length.mm(30)),
                    Corner.sharp(Length.ZERO, Length.mm(30)))));
  }

  @Example
  void cornersRounderThanTheirEdgeIsLongAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Outlines.roundedRectangle(Length.mm(60), Length.mm(5), R));
  }
}
