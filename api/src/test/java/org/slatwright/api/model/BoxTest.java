package org.slatwright.api.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.api.model.Points.box;
import static org.slatwright.api.model.Points.point;

import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

class BoxTest {

  private static final Box BRICK = box(point(0, 0, 0), point(10, 20, 30));

  @Test
  void boxesThatShareRoomOverlap() {
    assertOverlap(true, box(point(9, 19, 29), point(40, 40, 40)));
    assertOverlap(true, box(point(2, 2, 2), point(3, 3, 3)));
    assertOverlap(true, box(point(-5, 5, 5), point(50, 6, 6)));
  }

  @Test
  void boxesThatTouchDoNot() {
    assertOverlap(false, box(point(10, 0, 0), point(20, 20, 30)));
    assertOverlap(false, box(point(0, -5, 0), point(10, 0, 30)));
    assertOverlap(false, box(point(0, 0, 30), point(10, 20, 31)));
    assertOverlap(false, box(point(10, 20, 30), point(11, 21, 31)));
  }

  @Test
  void boxesThatPassOnOneAxisDoNot() {
    assertOverlap(false, box(point(2, 2, 40), point(3, 3, 50)));
  }

  @Test
  void oneNanometreIsAnOverlap() {
    Point3 corner = new Point3(new Length(9_999_999), Length.ZERO, Length.ZERO);

    assertOverlap(true, box(corner, point(20, 20, 30)));
  }

  @Test
  void theBoxAroundTwoReachesFromTheLeastToTheGreatest() {
    assertEquals(
        box(point(-1, 0, 0), point(10, 25, 30)),
        BRICK.around(box(point(-1, 5, 5), point(1, 25, 6))));
  }

  @Test
  void aBoxIsNotInsideOut() {
    assertThrows(IllegalArgumentException.class, () -> box(point(0, 1, 0), point(1, 0, 1)));
  }

  private static void assertOverlap(boolean expected, Box other) {
    if (expected) {
      assertTrue(BRICK.overlaps(other));
      assertTrue(other.overlaps(BRICK));
    } else {
      assertFalse(BRICK.overlaps(other));
      assertFalse(other.overlaps(BRICK));
    }
  }
}
