package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Finding;

class ClampOpeningTest {

  /** 320 + 2 × 44 + 2 × 20 = 448. */
  @Test
  void clampsOpenOverTheFrameAndTwoPads() throws Exception {
    Finding finding = Told.of(Told.ORCHIDS).the("clamp-opening");

    assertEquals("at least 448 mm", finding.limit());
    assertTrue(finding.message().contains("one clamp a rail, 3 in all"), finding.message());
  }

  @Test
  void highRailsTakeTwoClampsEach() throws Exception {
    Finding finding =
        Told.of(Told.ORCHIDS, "timber.rails={section: 44 x 120}").the("clamp-opening");

    assertTrue(finding.message().contains("two clamps a rail, 6 in all"), finding.message());
  }

  /** 13 + 2 × 1 1/2 + 2 × 3/4 = 17 1/2. */
  @Test
  void anInchRackIsToldInInches() throws Exception {
    assertEquals("at least 17 1/2\"", Told.of(Told.BULBS).the("clamp-opening").limit());
  }
}
