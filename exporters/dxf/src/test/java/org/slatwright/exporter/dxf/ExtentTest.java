package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern.Operation;

class ExtentTest {

  @Test
  void aRoundEndReachesBeyondItsCorners() {
    // A plate 60 wide whose right end is half a circle of radius 20.
    Outline.Arc end = new Outline.Arc(at(40, 0), at(40, 40), at(40, 20), true);
    assertEquals(
        new Extent(at(0, 0), at(60, 40)),
        extent(
            line(at(0, 0), at(40, 0)),
            end,
            line(at(40, 40), at(0, 40)),
            line(at(0, 40), at(0, 0))));
  }

  @Test
  void aHollowEndDoesNot() {
    Outline.Arc end = new Outline.Arc(at(40, 0), at(40, 40), at(40, 20), false);
    assertEquals(
        new Extent(at(0, 0), at(40, 40)),
        extent(
            line(at(0, 0), at(40, 0)),
            end,
            line(at(40, 40), at(0, 40)),
            line(at(0, 40), at(0, 0))));
  }

  @Test
  void anArcOverTheTopReachesUp() {
    // The upper half of a circle of radius 30 over (30, 10), from right to left.
    Outline.Arc over = new Outline.Arc(at(60, 10), at(0, 10), at(30, 10), true);
    assertEquals(new Extent(at(0, 0), at(60, 40)), extent(line(at(0, 10), at(60, 10)), over));
  }

  private static Extent extent(Outline.Edge... edges) {
    return Extent.of(List.of(new Entity.Contour(Operation.CUT_OUTSIDE, List.of(edges))));
  }

  private static Outline.Edge line(Point2 from, Point2 to) {
    return new Outline.Line(from, to);
  }

  private static Point2 at(long x, long y) {
    return new Point2(Length.mm(x), Length.mm(y));
  }
}
