package org.slatwright.api.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Against the textbook cross product: (a2 b3 - a3 b2, a3 b1 - a1 b3, a1 b2 - a2 b1). */
class DirectionTest {

  @Property
  void crossIsTheCrossProductOfTheUnitVectors(@ForAll Direction a, @ForAll Direction b) {
    int[] expected = cross(vector(a), vector(b));

    if (a.axis() == b.axis()) {
      assertArrayEquals(new int[3], expected);
      assertThrows(IllegalArgumentException.class, () -> a.cross(b));
    } else {
      assertArrayEquals(expected, vector(a.cross(b)));
    }
  }

  @Property
  void theOppositeIsTheNegatedVector(@ForAll Direction direction) {
    int[] there = vector(direction);
    int[] back = vector(direction.opposite());

    assertArrayEquals(new int[] {-there[0], -there[1], -there[2]}, back);
  }

  @Test
  void parallelDirectionsAreNamedWhenRefused() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> Direction.PLUS_X.cross(Direction.MINUS_X));

    assertEquals("PLUS_X and MINUS_X are parallel", refused.getMessage());
  }

  private static int[] vector(Direction direction) {
    return switch (direction) {
      case PLUS_X -> new int[] {1, 0, 0};
      case MINUS_X -> new int[] {-1, 0, 0};
      case PLUS_Y -> new int[] {0, 1, 0};
      case MINUS_Y -> new int[] {0, -1, 0};
      case PLUS_Z -> new int[] {0, 0, 1};
      case MINUS_Z -> new int[] {0, 0, -1};
    };
  }

  private static int[] cross(int[] a, int[] b) {
    return new int[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }
}
