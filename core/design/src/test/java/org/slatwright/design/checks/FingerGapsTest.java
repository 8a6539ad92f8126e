package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.slatwright.design.checks.Told.BULBS;
import static org.slatwright.design.checks.Told.ORCHIDS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** EN 16121 and EN 14749: gaps of 7 to 12 mm hold a finger; from memory. */
class FingerGapsTest {

  @ParameterizedTest
  @CsvSource({
    "3, false",
    "7, false",
    "7.1, true",
    "9, true",
    "11.9, true",
    "12, false",
    "13, false"
  })
  void gapsThatHoldAFingerAreNoted(String gap, boolean noted) throws Exception {
    assertEquals(noted, !Told.of(ORCHIDS, "slats.gap=" + gap).by("finger-gaps").isEmpty());
  }

  @Test
  void theGapAdvisedHoldsNoFinger() throws Exception {
    assertAdviceHelps(ORCHIDS, "slats.gap=9");
    assertAdviceHelps(BULBS, "slats.gap=3/8");
    assertAdviceHelps(ORCHIDS, "slats.gap=10", "increment=5");
  }

  private static void assertAdviceHelps(String yaml, String... settings) throws Exception {
    Told before = Told.of(yaml, settings);
    String advice = before.the("finger-gaps").advice();
    String[] followed = settings.clone();
    followed[0] = advice.substring(advice.indexOf("slats.gap="));

    assertFalse(before.by("finger-gaps").isEmpty());
    assertEquals(0, Told.of(yaml, followed).by("finger-gaps").size());
  }
}
