package org.slatwright.api.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.api.model.Points.point;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

class OutlineTest {

  private static final double TIGHT = 1e-12;
  private static final Point2 CENTRE = point(0, 0);

  @Test
  void aQuarterTurnIsHalfPi() {
    assertEquals(Math.PI / 2, arc(point(10, 0), point(0, 10), true).sweep(), TIGHT);
    assertEquals(-Math.PI / 2, arc(point(0, 10), point(10, 0), false).sweep(), TIGHT);
  }

  @Test
  void theOtherWayRoundIsThreeQuarters() {
    assertEquals(-3 * Math.PI / 2, arc(point(10, 0), point(0, 10), false).sweep(), TIGHT);
    assertEquals(3 * Math.PI / 2, arc(point(0, 10), point(10, 0), true).sweep(), TIGHT);
  }

  @Test
  void aHalfTurnIsPiWhicheverSideItStarts() {
    assertEquals(Math.PI, arc(point(10, 0), point(-10, 0), true).sweep(), TIGHT);
    assertEquals(-Math.PI, arc(point(10, 0), point(-10, 0), false).sweep(), TIGHT);
    assertEquals(Math.PI, arc(point(-10, 0), point(10, 0), true).sweep(), TIGHT);
    assertEquals(-Math.PI, arc(point(-10, 0), point(10, 0), false).sweep(), TIGHT);
  }

  /** Across the negative x axis, where the arctangent jumps from π to -π. */
  @Test
  void aTurnAcrossTheJumpOfTheArctangentIsNotLonger() {
    assertEquals(Math.PI / 2, arc(point(-7, 7), point(-7, -7), true).sweep(), TIGHT);
    assertEquals(-Math.PI / 2, arc(point(-7, -7), point(-7, 7), false).sweep(), TIGHT);
  }

  /** Euclid, Elements, IV.15: the chord of a sixth of a circle is as long as its radius. */
  @Test
  void aSixthOfACircleHasAChordOfItsRadius() {
    Point2 sixth = new Point2(Length.mm(50), Length.roundedMm(100 * Math.sqrt(3) / 2));
    Outline.Arc arc = arc(point(100, 0), sixth, true);

    assertEquals(Math.PI / 3, arc.sweep(), 1e-7);
    assertEquals(arc.radiusMm(), arc.from().mmTo(arc.to()), 1e-5);
  }

  /** The right-angled triangles of sides 3-4-5 and 5-12-13: both legs end on exact circles. */
  @Test
  void theRadiusIsTheHypotenuse() {
    assertEquals(5, arc(point(3, 4), point(4, 3), false).radiusMm(), TIGHT);
    assertEquals(13, arc(point(5, 12), point(-12, 5), true).radiusMm(), TIGHT);
    // the two points of 5-12-13 are a quarter turn apart: (x, y) goes to (-y, x)
    assertEquals(Math.PI / 2, arc(point(5, 12), point(-12, 5), true).sweep(), TIGHT);
    // between (3, 4) and (4, 3) lies atan(4/3) - atan(3/4) = atan(7/24)
    assertEquals(-Math.atan(7 / 24.0), arc(point(3, 4), point(4, 3), false).sweep(), TIGHT);
  }

  @Property(tries = 200)
  void goneThroughBackwardsAnArcSweepsTheOtherWay(
      @ForAll @IntRange(min = 1, max = 359) int from,
      @ForAll @IntRange(min = 1, max = 359) int turn) {
    Point2 start = onCircle(from);
    Point2 end = onCircle(from + turn);

    assertEquals(Math.toRadians(turn), arc(start, end, true).sweep(), 1e-6);
    assertEquals(-Math.toRadians(turn), arc(end, start, false).sweep(), 1e-6);
  }

  @Test
  void anArcKeepsItsTurnWhenItIsMoved() {
    Outline.Arc arc = arc(point(10, 0), point(0, 10), true);
    Outline.Arc moved = arc.moved(Length.mm(3), Length.mm(-4));

    assertEquals(new Outline.Arc(point(13, -4), point(3, 6), point(3, -4), true), moved);
    assertEquals(arc.sweep(), moved.sweep(), TIGHT);
  }

  @Test
  void anArcEndsAsFarFromItsCentreAsItStarts() {
    assertTrue(refusal(() -> arc(point(10, 0), point(0, 11), true)).startsWith("an arc's ends"));
  }

  @Test
  void anEdgeGoesSomewhere() {
    assertEquals(
        "an edge starts and ends at " + point(1, 1),
        refusal(() -> new Outline.Line(point(1, 1), point(1, 1))));
    assertEquals(
        "an edge starts and ends at " + point(1, 1),
        refusal(() -> arc(point(1, 1), point(1, 1), true)));
  }

  @Test
  void aPathIsClosed() {
    Outline.Edge along = new Outline.Line(point(0, 0), point(10, 0));
    Outline.Edge up = new Outline.Line(point(10, 0), point(10, 5));
    Outline.Edge upBeside = new Outline.Line(point(11, 0), point(10, 5));
    Outline.Edge back = new Outline.Line(point(10, 5), point(0, 0));

    assertEquals(3, new Outline.Path(List.of(along, up, back)).edges().size());
    assertEquals(
        "a path has a gap from " + point(10, 5) + " to " + point(0, 0),
        refusal(() -> new Outline.Path(List.of(along, up))));
    assertEquals(
        "a path has a gap from " + point(10, 0) + " to " + point(11, 0),
        refusal(() -> new Outline.Path(List.of(along, upBeside, back))));
    assertEquals("a path has at least two edges", refusal(() -> new Outline.Path(List.of(along))));
  }

  @Test
  void aGapOfOneNanometreIsAGap() {
    Point2 beside = new Point2(Length.mm(10), new Length(1));

    assertTrue(
        refusal(
                () ->
                    new Outline.Path(
                        List.of(
                            new Outline.Line(point(0, 0), point(10, 0)),
                            new Outline.Line(beside, point(0, 0)))))
            .startsWith("a path has a gap"));
  }

  @Test
  void aCircleHasADiameter() {
    assertEquals(
        "a circle's diameter must be > 0, was 0 mm",
        refusal(() -> new Outline.Circle(CENTRE, Length.ZERO)));
  }

  private static Outline.Arc arc(Point2 from, Point2 to, boolean counterClockwise) {
    return new Outline.Arc(from, to, CENTRE, counterClockwise);
  }

  private static Point2 onCircle(int degrees) {
    double radians = Math.toRadians(degrees);
    return new Point2(
        Length.roundedMm(100 * Math.cos(radians)), Length.roundedMm(100 * Math.sin(radians)));
  }

  private static String refusal(Runnable making) {
    return assertThrows(IllegalArgumentException.class, making::run).getMessage();
  }
}
