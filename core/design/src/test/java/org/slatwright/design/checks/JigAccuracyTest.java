package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.ORCHIDS;

import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/**
 * By hand: stock of 44 mm, a bit of 10 mm, a guide of five 6 mm plates. A hole is off by half of
 * 0.4 mm between the cheeks, half of 0.1 mm in the guide and, 81 mm past it, 0.1 mm for each 30 mm:
 * 0.52 mm of the 17 mm of wood beside it.
 */
class JigAccuracyTest {

  @Test
  void theGuideIsComparedWithTheDiameter() throws Exception {
    Finding guide = Told.of(ORCHIDS).by("jig-check").get(0);
    assertEquals("30 mm", guide.value());
    assertEquals("at least 25 mm", guide.limit());
    assertEquals(Severity.NOTE, guide.severity());
  }

  @Test
  void theWoodBesideTheHoleIsToldWithAllPlayTakenOff() throws Exception {
    Finding play = Told.of(ORCHIDS).by("jig-check").get(1);
    assertTrue(play.message().contains("up to 0.52 mm off"), play.message());
    assertEquals("16 mm", play.value());
  }

  /** 15 less 5 less 0.52. */
  @Test
  void theNarrowerOfRailAndUprightCounts() throws Exception {
    Finding play = Told.of(ORCHIDS, "timber.rails.section=30x44").by("jig-check").get(1);
    assertEquals("9.5 mm", play.value());
  }
}
