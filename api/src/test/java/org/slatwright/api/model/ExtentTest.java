package org.slatwright.api.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.api.model.Points.point;

import java.util.List;
import org.junit.jupiter.api.Test;

class ExtentTest {

  @Test
  void aRoundEndReachesBeyondItsCorners() {
    // A plate 60 wide whose right end is half a circle of radius 20.
    Outline.Arc end = new Outline.Arc(point(40, 0), point(40, 40), point(40, 20), true);
    assertEquals(
        new Extent(point(0, 0), point(60, 40)),
        extent(
            line(point(0, 0), point(40, 0)),
            end,
            line(point(40, 40), point(0, 40)),
            line(point(0, 40), point(0, 0))));
  }

  @Test
  void aHollowEndDoesNot() {
    Outline.Arc end = new Outline.Arc(point(40, 0), point(40, 40), point(40, 20), false);
    assertEquals(
        new Extent(point(0, 0), point(40, 40)),
        extent(
            line(point(0, 0), point(40, 0)),
            end,
            line(point(40, 40), point(0, 40)),
            line(point(0, 40), point(0, 0))));
  }

  @Test
  void anArcOverTheTopReachesUp() {
    // The upper half of a circle of radius 30 over (30, 10), from right to left.
    Outline.Arc over = new Outline.Arc(point(60, 10), point(0, 10), point(30, 10), true);
    assertEquals(
        new Extent(point(0, 10), point(60, 40)), extent(line(point(0, 10), point(60, 10)), over));
  }

  private static Extent extent(Outline.Edge... edges) {
    return Extent.of(new Outline.Path(List.of(edges)));
  }

  private static Outline.Edge line(Point2 from, Point2 to) {
    return new Outline.Line(from, to);
  }
}
