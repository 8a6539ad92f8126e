package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three diameters to an end, one and a half to an edge: common practice, no source. */
class ScrewRoomTest {

  /**
   * A screw of 4 mm. Across a rail of 40, beside a dowel of 10: (10 + 4) / 2 + 1 + 12 = 20. Along a
   * slat that two share: 12 is a quarter of 48. Where slats meet: 12 + 6 is half a rail of 36.
   */
  @ParameterizedTest
  @CsvSource({
    "40, 10, 48, 2, false, true",
    "39.9, 10, 48, 2, false, false",
    "40, 10.1, 48, 2, false, false",
    "40, 10, 47.9, 2, false, false",
    "40, 10, 24, 1, false, true",
    "40, 10, 23.9, 1, false, false",
    "40, 10, 48, 3, false, false",
    "36, 0, 48, 2, true, true",
    "35.9, 0, 48, 2, true, false",
    "35.9, 0, 48, 2, false, true"
  })
  void aScrewIsTakenWhereItHasWoodAllAround(
      String rail, String dowel, String slat, int perEnd, boolean meets, boolean takes) {
    ScrewRoom room =
        new ScrewRoom(
            Solving.length(rail), Solving.length(dowel), Solving.length(slat), perEnd, meets);

    assertEquals(takes, room.takes(Solving.length("4")));
  }
}
