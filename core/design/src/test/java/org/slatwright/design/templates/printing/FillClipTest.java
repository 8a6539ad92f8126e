package org.slatwright.design.templates.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;

/** What is filled in a window is what is filled and in the window, by JTS. */
class FillClipTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final PaperBox WINDOW = new PaperBox(10, 20, 60, 50);

  @Property(tries = 300)
  void aTriangleIsClippedAsJtsDoes(
      @ForAll @Size(6) List<@DoubleRange(min = -20, max = 90) Double> numbers) {
    List<PaperPoint> corners =
        List.of(
            new PaperPoint(numbers.get(0), numbers.get(1)),
            new PaperPoint(numbers.get(2), numbers.get(3)),
            new PaperPoint(numbers.get(4), numbers.get(5)));
    Geometry window = FACTORY.toGeometry(new Envelope(10, 60, 20, 50));
    assertEquals(polygon(corners).intersection(window).getArea(), clipped(corners), 1e-6);
  }

  @Test
  void aFillThatOnlyTouchesTheWindowIsNotSeen() {
    assertEquals(0, clipped(rectangle(0, 20, 10, 50)));
  }

  @Test
  void aFillInTheWindowStaysAsItIs() {
    assertEquals(40, clipped(rectangle(12, 22, 20, 27)), 1e-9);
  }

  private static List<PaperPoint> rectangle(double left, double low, double right, double high) {
    return List.of(
        new PaperPoint(left, low),
        new PaperPoint(right, low),
        new PaperPoint(right, high),
        new PaperPoint(left, high));
  }

  private static double clipped(List<PaperPoint> corners) {
    return new FillClip(WINDOW)
        .of(new Figure.Fill(corners, Figure.Shade.TINT))
        .map(figure -> ((Figure.Fill) figure).points())
        .map(
            points -> {
              assertTrue(points.stream().allMatch(WINDOW.grown(1e-9, 1e-9)::contains));
              return polygon(points).getArea();
            })
        .orElse(0.0);
  }

  private static Geometry polygon(List<PaperPoint> points) {
    return FACTORY.createPolygon(
        Stream.concat(points.stream(), Stream.of(points.get(0)))
            .map(point -> new Coordinate(point.x(), point.y()))
            .toArray(Coordinate[]::new));
  }
}
