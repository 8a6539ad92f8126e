package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.plan.Finding;

class CautionsTest {

  private static final String BOARDS =
      "timber.slats.boards=[{length: 1600, width: 120, thickness: 18, count: 30}]";

  @Test
  void anOrdinaryRackHasNoMoreCautionsThanAreRead() throws Exception {
    assertEquals(
        List.of(
            "codes", "load", "eyes and ears", "sawing and drilling", "dust", "brads", "finishing"),
        Told.of(ORCHIDS).subjects("caution"));
  }

  @Test
  void everyCautionSaysWhereItComesFrom() throws Exception {
    List<Finding> all =
        Told.of(
                ORCHIDS,
                BOARDS,
                "shop.cutter={process: laser, kerf: 0.15}",
                "timber.frame.species=northern red oak",
                "load.climate=outdoors")
            .by("caution");

    assertEquals(13, all.size());
    for (Finding caution : all) {
      assertFalse(caution.source().isBlank(), caution.subject());
      assertTrue(caution.message().endsWith("."), caution.message());
      assertEquals(Finding.Severity.NOTE, caution.severity());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pallets | " + BOARDS,
        "old boards | " + BOARDS,
        "laser | shop.cutter={process: laser, kerf: 0.15}",
        "router | shop.cutter={process: router, tool: 3}",
        "hardwood dust | timber.frame.species=european beech",
        "hardwood dust | timber.frame.species=white oak",
        "sensitisers | timber.frame.species=white oak",
        "sensitisers | timber.frame.species=western redcedar",
        "treated wood | load.climate=outdoors"
      })
  void aCautionComesWithWhatItIsAbout(String topic, String setting) throws Exception {
    assertFalse(Told.of(ORCHIDS).subjects("caution").contains(topic));
    assertTrue(Told.of(ORCHIDS, setting).subjects("caution").contains(topic));
  }

  @Test
  void redcedarIsNoHardwoodAndBeechNoSensitiser() throws Exception {
    assertFalse(
        Told.of(ORCHIDS, "timber.frame.species=western redcedar")
            .subjects("caution")
            .contains("hardwood dust"));
    assertFalse(
        Told.of(ORCHIDS, "timber.frame.species=european beech")
            .subjects("caution")
            .contains("sensitisers"));
  }

  @Test
  void screwsDoNotComeOutSideways() throws Exception {
    assertFalse(
        Told.of(ORCHIDS, "joint.fixing={kind: screw}").subjects("caution").contains("brads"));
  }

  @Test
  void theLoadIsTheOneReckonedWith() throws Exception {
    assertTrue(
        Told.of(ORCHIDS, "load.per-shelf=17 kg").by("caution").stream()
            .anyMatch(caution -> caution.message().contains("17 kg evenly on each shelf")));
  }
}
