package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

class FittingTest {

  /** 3 × 100 and two kerfs of 3 are 306. */
  @Test
  void oneLessThanPiecesLieBetween() {
    assertEquals(3, pieces(306, 100, 3));
    assertEquals(2, pieces(305, 100, 3));
  }

  @Test
  void nothingGoesIntoLessThanNothing() {
    assertEquals(0, pieces(99, 100, 3));
    assertEquals(0, pieces(0, 100, 3));
    assertEquals(0, pieces(-250, 100, 3));
  }

  private static long pieces(int room, int each, int between) {
    return Fitting.pieces(Length.mm(room), Length.mm(each), Length.mm(between));
  }
}
