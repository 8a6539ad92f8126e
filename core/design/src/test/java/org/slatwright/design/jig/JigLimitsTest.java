package org.slatwright.design.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Finding;

/** Why there is no jig, in the numbers that decide it. */
class JigLimitsTest {

  @Test
  void aRailWiderThanTheUprightCannotBeStraddled() {
    Finding finding = only(Bench.square(44, 10, 6).withRail(50, 70, 1));
    assertEquals(
        "no jig can be cut from sheet: the rail is 50 mm wide, the upright 44 mm: the cheeks cannot straddle"
            + " both",
        finding.message());
    assertEquals("rails at most 44 mm wide", finding.advice());
  }

  @Test
  void aSlenderUprightLeavesTooLittleSheetBesideTheGuideHole() {
    Finding finding = only(Bench.square(20, 10, 6));
    assertEquals(
        "no jig can be cut from sheet: plate J1 (guide plate) would keep 5.2 mm of sheet between slot and"
            + " guide hole; it takes 6 mm",
        finding.message());
    assertEquals(
        "uprights 1.6 mm wider, thinner dowels, or thinner sheet for the jig", finding.advice());
  }

  @Test
  void theAdviceIsEnough() {
    assertTrue(JigMaker.make(Bench.square(21.6, 10, 6).rack()).jig().isPresent());
    assertTrue(JigMaker.make(Bench.square(20, 10, 5).rack()).jig().isPresent());
  }

  @Test
  void twoDowelsMayLieTooCloseForTheirGuideHoles() {
    Finding finding = only(Bench.square(44, 10, 6).withRail(44, 30, 2));
    assertEquals(
        "no jig can be cut from sheet: plate J1 (guide plate) would keep 5 mm of sheet between two guide"
            + " holes; it takes 6 mm",
        finding.message());
    assertEquals("dowels 1 mm farther apart, or one dowel a joint", finding.advice());
  }

  @Test
  void aBushThinnerThanItsBitAndWallsIsRefused() {
    Finding finding = only(Bench.square(44, 10, 6).withBush(11));
    assertEquals(
        "no jig can be cut from sheet: a guide bush of 11 mm outside leaves no wall around a bit of 10 mm",
        finding.message());
    assertEquals("a bush of at least 12 mm outside", finding.advice());
  }

  @Test
  void thinSheetTakesTooManyGuidePlates() {
    Finding finding = only(Bench.square(44, 12, 2));
    assertEquals(
        "no jig can be cut from sheet: a guide 30 mm deep (2 1/2 dowel diameters) takes 15 plates of 2 mm"
            + " sheet; more than 12 do not stay in line",
        finding.message());
    assertEquals("set shop.jig-sheet=3", finding.advice());
    assertTrue(JigMaker.make(Bench.square(44, 12, 3).rack()).jig().isPresent());
  }

  @Test
  void everyReasonIsGivenAtOnceAndInTheMakersUnits() {
    List<Finding> findings =
        JigMaker.make(
                Bench.measured(50.8, 7.9375, 6.35, 38.1).withRail(63.5, 70, 1).in(Unit.INCH).rack())
            .findings();
    assertEquals(
        List.of("rails at most 2\" wide", "uprights at least 3/8\" deep", "set shop.jig-sheet=1"),
        findings.stream().map(Finding::advice).toList());
  }

  @Test
  void aMakerInInchesIsAdvisedInSixtyFourths() {
    Finding finding = only(Bench.square(19.05, 9.525, 6.35).in(Unit.INCH));
    assertEquals(
        "uprights 7/64\" wider, thinner dowels, or thinner sheet for the jig", finding.advice());
    double advised = 19.05 + 25.4 * 7 / 64;
    double less = advised - 25.4 / 64;
    assertTrue(isMade(Bench.square(advised, 9.525, 6.35).in(Unit.INCH)));
    assertFalse(isMade(Bench.square(less, 9.525, 6.35).in(Unit.INCH)));
  }

  private static boolean isMade(Bench bench) {
    return JigMaker.make(bench.rack()).jig().isPresent();
  }

  private static Finding only(Bench bench) {
    MadeJig made = JigMaker.make(bench.rack());
    assertTrue(made.jig().isEmpty());
    assertEquals(1, made.findings().size(), made.findings().toString());
    assertEquals(Finding.Severity.WARNING, made.findings().get(0).severity());
    return made.findings().get(0);
  }
}
