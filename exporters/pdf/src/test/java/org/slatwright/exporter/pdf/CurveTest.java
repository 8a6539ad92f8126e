package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

class CurveTest {

  private static final PaperPoint CENTRE = new PaperPoint(105, 148.5);
  private static final double PART_OF_RADIUS = 4.3e-6;
  private static final int STEPS = 100;

  @Test
  void aCircleIsEightPiecesThatCloseUpon() {
    Curve circle = Curve.of(new Figure.Circle(CENTRE, 50, LineKind.THIN));
    assertEquals(8, circle.pieces().size());
    assertNear(new PaperPoint(155, 148.5), circle.start());
    assertNear(circle.start(), circle.pieces().get(7).end());
    assertOnCircle(circle, 50);
  }

  /** Bound: an eighth of a circle in one cubic is at most 4.2e-6 of the radius off; reckoned. */
  @Property(tries = 300)
  void anArcStaysOnItsCircleAndEndsWhereItShould(
      @ForAll @DoubleRange(min = 0.1, max = 500) double radius,
      @ForAll @DoubleRange(min = -720, max = 720) double start,
      @ForAll @DoubleRange(min = -360, max = 360) double sweep) {
    Curve arc = Curve.of(new Figure.Arc(CENTRE, radius, start, sweep, LineKind.THIN));
    assertTrue(arc.pieces().size() <= Math.ceil(Math.abs(sweep) / 45) + 1e-9 || sweep == 0);
    assertNear(onCircle(radius, start), arc.start());
    assertNear(onCircle(radius, start + sweep), arc.pieces().get(arc.pieces().size() - 1).end());
    assertOnCircle(arc, radius);
  }

  /** It runs the way it should, not the long way round. */
  @Test
  void theMiddleOfAnArcLiesOnItsSide() {
    Curve down = Curve.of(new Figure.Arc(CENTRE, 10, 0, -45, LineKind.THIN));
    assertNear(onCircle(10, -22.5), middle(down.start(), down.pieces().get(0), 0.5), 1e-4);
  }

  private static void assertOnCircle(Curve curve, double radius) {
    PaperPoint from = curve.start();
    for (Curve.Piece piece : curve.pieces()) {
      for (int i = 0; i <= STEPS; i++) {
        PaperPoint point = middle(from, piece, i / (double) STEPS);
        double distance = Math.hypot(point.x() - CENTRE.x(), point.y() - CENTRE.y());
        assertEquals(radius, distance, radius * PART_OF_RADIUS);
      }
      from = piece.end();
    }
  }

  /** A point of a cubic Bézier curve, by its Bernstein form. */
  private static PaperPoint middle(PaperPoint from, Curve.Piece piece, double t) {
    double s = 1 - t;
    double a = s * s * s;
    double b = 3 * s * s * t;
    double c = 3 * s * t * t;
    double d = t * t * t;
    return new PaperPoint(
        a * from.x() + b * piece.first().x() + c * piece.second().x() + d * piece.end().x(),
        a * from.y() + b * piece.first().y() + c * piece.second().y() + d * piece.end().y());
  }

  private static PaperPoint onCircle(double radius, double degrees) {
    double angle = Math.toRadians(degrees);
    return CENTRE.moved(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  private static void assertNear(PaperPoint expected, PaperPoint actual) {
    assertNear(expected, actual, 1e-9);
  }

  private static void assertNear(PaperPoint expected, PaperPoint actual, double bound) {
    assertEquals(expected.x(), actual.x(), bound);
    assertEquals(expected.y(), actual.y(), bound);
  }
}
