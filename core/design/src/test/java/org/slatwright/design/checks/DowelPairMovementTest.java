package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

class DowelPairMovementTest {

  private static final String RAILS = "timber.rails={section: 44 x 90}";
  private static final String PONDEROSA = "timber.frame.species=ponderosa pine";

  /**
   * Wood Handbook, chapter 13, with C_T 0.00216 of ponderosa pine (table 13-5), so S 6.2, for
   * dowels 45 mm apart: 45 x 2.5 / (3000 / 6.2 - 30 + 9.5) = 0.243 mm from 9.5 to 12 %.
   */
  @Test
  void twoDowelsAreMovedByWhatTheHandbookGives() throws Exception {
    Finding found = Told.of(ORCHIDS, RAILS, PONDEROSA, "joint.dowels=2").the("dowel-pair-movement");

    assertEquals("0.24 mm", found.value());
    assertEquals("at most 0.5 mm", found.limit());
    assertEquals(Severity.NOTE, found.severity());
  }

  /** 45 x 7 / (3000 / 6.2 - 30 + 17) = 0.668 mm from 17 to 24 %. */
  @Test
  void outdoorsTheyAreMovedTooFar() throws Exception {
    Finding found =
        Told.of(ORCHIDS, RAILS, PONDEROSA, "joint.dowels=2", "load.climate=outdoors")
            .the("dowel-pair-movement");

    assertEquals("0.67 mm", found.value());
    assertEquals(Severity.WARNING, found.severity());
  }

  @Test
  void oneDowelAsAdvisedIsNotMoved() throws Exception {
    String[] outdoors = {RAILS, PONDEROSA, "load.climate=outdoors", "joint.dowels=2"};
    Finding found = Told.of(ORCHIDS, outdoors).the("dowel-pair-movement");
    assertEquals(List.of(List.of("joint.dowels=1")), Advice.changes(found));

    outdoors[3] = "joint.dowels=1";

    assertEquals(List.of(), Told.of(ORCHIDS, outdoors).by("dowel-pair-movement"));
  }

  @Test
  void lowerRailsAsAdvisedMoveThemLess() throws Exception {
    Finding found =
        Told.of(
                ORCHIDS,
                "timber.rails={section: 44 x 64}",
                PONDEROSA,
                "joint.dowels=2",
                "load.climate=outdoors")
            .the("dowel-pair-movement");

    assertEquals(Severity.NOTE, found.severity());
  }
}
