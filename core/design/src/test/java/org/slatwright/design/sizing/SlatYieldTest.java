package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.measure.Length;

/**
 * A cut takes a kerf between two slats, so that n of length l fit a stretch of {@code n·l +
 * (n-1)·k}: arithmetic, reckoned by hand beside each test.
 */
class SlatYieldTest {

  /** 700 + 3 + 700 = 1403; 3 × 700 + 2 × 3 = 2106. */
  @ParameterizedTest
  @CsvSource({
    "699, 1, 1",
    "700, 1, 0",
    "700, 2, 1",
    "1402, 2, 1",
    "1403, 2, 0",
    "2105, 3, 1",
    "2106, 3, 0",
    "2106, 2, 0",
    "2106, 5, 2"
  })
  void slatsOfOneLengthFitToTheMillimetre(int stretch, int needed, int missing) {
    assertEquals(count(missing, 0), missing(count(needed, 0), stretch, 1));
  }

  /** 600 is one short slat, 1203 two; 1303 a long one and a short one; 1403 two long ones. */
  @ParameterizedTest
  @CsvSource({
    "599, 4, 1, 2, 1, 2",
    "600, 1, 1, 2, 1, 1",
    "600, 2, 1, 2, 1, 0",
    "600, 5, 1, 2, 1, 0",
    "699, 1, 1, 2, 1, 1",
    "1203, 1, 1, 2, 1, 0",
    "1302, 1, 1, 1, 0, 1",
    "1303, 1, 1, 1, 0, 0",
    "1302, 2, 1, 2, 0, 0",
    "1403, 1, 2, 1, 0, 1",
    "2006, 1, 2, 1, 0, 0",
    "2005, 1, 2, 1, 0, 1"
  })
  void slatsOfTwoLengthsFitToTheMillimetre(
      int stretch, int howMany, int longer, int shorter, int missingLonger, int missingShorter) {
    assertEquals(
        count(missingLonger, missingShorter), missing(count(longer, shorter), stretch, howMany));
  }

  /** A short slat may be cut from where a long one fits: 700 each. */
  @ParameterizedTest
  @CsvSource({"3, 0, 1", "4, 0, 0", "5, 0, 0"})
  void aLongStretchServesForAShortSlat(int howMany, int longer, int shorter) {
    assertEquals(count(longer, shorter), missing(count(1, 3), 700, howMany));
  }

  /**
   * No kerf, 700 and 400: 1100 is a long one and a short one, 1200 three short ones; a millimetre
   * less, and one short one of these is missing.
   */
  @Test
  void everyWayToCutIsWeighed() {
    SlatYield rack = new SlatYield(Length.mm(700), Length.mm(400), Length.ZERO, count(1, 4));

    assertEquals(count(0, 0), rack.missing(Map.of(Length.mm(1100), 1, Length.mm(1200), 1)));
    assertEquals(count(0, 1), rack.missing(Map.of(Length.mm(1100), 1, Length.mm(1199), 1)));
    assertEquals(count(0, 1), rack.missing(Map.of(Length.mm(1099), 1, Length.mm(1200), 1)));
  }

  /** In inches: 24 + 1/8 + 20 = 44 1/8. */
  @Test
  void inchesFitToTheKerf() {
    SlatYield rack =
        new SlatYield(Length.inches(24, 1), Length.inches(20, 1), Length.inches(1, 8), count(1, 1));

    assertEquals(count(0, 0), rack.missing(Map.of(Length.inches(353, 8), 1)));
    assertEquals(count(0, 1), rack.missing(Map.of(Length.inches(352, 8), 1)));
  }

  private static SlatYield.Count count(int longer, int shorter) {
    return new SlatYield.Count(longer, shorter);
  }

  private static SlatYield.Count missing(SlatYield.Count needed, int stretch, int howMany) {
    return new SlatYield(Length.mm(700), Length.mm(600), Length.mm(3), needed)
        .missing(Map.of(Length.mm(stretch), howMany));
  }
}
