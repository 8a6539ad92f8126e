package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.framing.UnevenRack;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/**
 * A stand for one pot a shelf, its single slat of 89 x 19 mm spanning 600 mm: the beam that is
 * worked out by hand in the terms of the Wood Handbook (FPL-GTR-282), eq. 9-2, with E 8900 MPa and
 * 10 kg: it sags 0.60919 + 0.00938 mm at 1.3735 MPa, spread evenly, and bears 2.7470 MPa with the
 * load in the middle. Ponderosa pine at 12 % weighs 448 kg/m³ (chapter 4), so the slat itself
 * 0.45454 kg.
 */
class SlatsAndRailsTest {

  private static final String POT_STAND =
      """
      slatwright: 1
      title: Pot stand
      timber:
        frame: { section: 44 x 44, species: ponderosa pine }
        slats: { section: 19 x 89 }
      rack: { interior-width: 556, rail-length: 101, upright: 900, foot: 100 }
      slats: { per-shelf: 1 }
      load: { per-shelf: 10 kg }
      """;

  private static final double WITH_ITS_OWN_WEIGHT = 1.045454;

  /** EN 338, C16: E 8000 MPa; EN 1995-1-1: creep 1 + 0.8 x 0.6 indoors. */
  private static final double SAG = (0.60919 + 0.00938) * 8900 / 8000 * 1.48 * WITH_ITS_OWN_WEIGHT;

  @Test
  void slatsBendAndSagAsWorkedOutByHand() throws Exception {
    SlatCase slat = slat();

    assertEquals(1.3735 * WITH_ITS_OWN_WEIGHT, slat.strength().value(), 0.0001);
    assertEquals(2.7470 + 1.3735 * 0.045454, slat.strengthUnderOneThing().value(), 0.0002);
    assertEquals(SAG, slat.sag(), 0.0001);
    assertEquals(
        98.0665 * 60 / 2 / (89 * 19 * 19 / 6.0),
        slat("slats.overhang=60").strengthOfTheEnd().value(),
        1e-9);
  }

  /** C16 under a long-term load: 16 x 0.7 / 1.3 = 8.62 MPa, and 1.5 on the load (EN 1990). */
  @Test
  void slatsMayBearWhatTheTimberStandardsSay() throws Exception {
    assertEquals(8.615 / 1.5, slat().strength().most(), 0.001);
    assertEquals(16 * 0.55 / 1.3 / 1.5, slat("load.climate=outdoors").strength().most(), 0.001);
  }

  /**
   * From the numbers above: 5.74 MPa come with 41.4 kg and 8.62 MPa with 62.3 kg; 3 mm (600/200)
   * with 29.0 kg and 6 mm with 58.5 kg; in the middle 5.74 MPa with 20.7 kg and 16 MPa with 58.0
   * kg.
   */
  @ParameterizedTest
  @CsvSource({
    "slat-strength, 41, NOTE",
    "slat-strength, 42, WARNING",
    "slat-strength, 62, WARNING",
    "slat-strength, 63, ERROR",
    "slat-sag, 28.5, NOTE",
    "slat-sag, 29.5, WARNING",
    "slat-sag, 58, WARNING",
    "slat-sag, 59, ERROR",
    "slat-point-load, 20.5, NOTE",
    "slat-point-load, 21, WARNING",
    "slat-point-load, 57.5, WARNING",
    "slat-point-load, 58.5, ERROR",
  })
  void aHeavierLoadTurnsANoteIntoAWarningAndAnError(String rule, String load, Severity severity)
      throws Exception {
    assertSame(severity, finding(rule, "load.per-shelf=" + load + "kg").severity());
  }

  @Test
  void theNumbersAreTold() throws Exception {
    Finding sag = finding("slat-sag");

    assertEquals("slats", sag.subject());
    assertEquals("1.1 mm", sag.value());
    assertEquals("at most 3 mm", sag.limit());
    assertTrue(sag.message().contains("10 kg"), sag.message());
  }

  /** A sixth hundredth of 600 mm is 1 mm, which comes with 9.36 kg. */
  @Test
  void aSagThatIsSeenIsToldWithWhatHidesIt() throws Exception {
    assertEquals("", finding("slat-sag", "load.per-shelf=9 kg").advice());
    assertEquals(
        "it holds, but the eye sees more than 1 mm: for less, set timber.slats.section=20x89",
        finding("slat-sag").advice());
  }

  @Test
  void theThinnestOfReclaimedBoardsDecides() throws Exception {
    String boards =
        POT_STAND.replace(
            "{ section: 19 x 89 }",
            "{ boards: [ { length: 900, width: 89, thickness: 22, count: 2 }, "
                + "{ length: 900, width: 89, thickness: 19 } ] }");
    SlatCase slat = SlatCase.of(Designs.of(boards).rack());

    assertEquals(1.3735 * WITH_ITS_OWN_WEIGHT, slat.strength().value(), 0.0001);
    assertEquals(14 * 0.7 / 1.3 / 1.5, slat.strength().most(), 1e-9, "C14, as nobody graded them");
  }

  /** As by hand above, 16 instead of 19 mm thick: 19² / 16² times the stress of the load alone. */
  @Test
  void aSectionBesideThinnerBoardsMakesNoSlatStronger() throws Exception {
    String boards = "timber.slats.boards=[{length: 1200, width: 89, thickness: 16, count: 9}]";
    String yaml = POT_STAND.replace("section: 19 x 89", "boards: " + boards.substring(20));
    Reckoned alone = SlatCase.of(Designs.of(yaml).rack()).strength();

    for (String section : List.of("16 x 89", "23 x 89", "45 x 89")) {
      Finding finding =
          finding(
              "slat-strength", boards, "timber.slats.section=" + section, "load.per-shelf=35kg");
      Reckoned beside = slat(boards, "timber.slats.section=" + section).strength();

      assertEquals(alone, beside, section);
      assertSame(Severity.WARNING, finding.severity(), section);
    }
    double ownWeight = 1.3735 * 0.045454 * 19 / 16;
    assertEquals(1.3735 * 19 * 19 / 16 / 16 + ownWeight, alone.value(), 0.0002);
  }

  @Test
  void noSectionIsAdvisedWhereSlatsComeFromBoards() throws Exception {
    String boards = "timber.slats.boards=[{length: 1200, width: 89, thickness: 16, count: 9}]";
    String[] settings = {boards, "load.per-shelf=30kg", "slats.overhang=150"};

    List<Finding> found = Checks.of(Designs.of(POT_STAND, settings));

    assertTrue(found.stream().noneMatch(one -> one.advice().contains("timber.slats.section")));
    String advice = Designs.finding("slat-strength", POT_STAND, settings).advice();
    assertTrue(advice.endsWith(", or take boards at least 18 mm thick"), advice);
    String thicker = boards.replace("thickness: 16", "thickness: 18");
    String section = "timber.slats.section=18 x 89";
    assertSame(
        Severity.NOTE,
        Designs.finding("slat-strength", POT_STAND, thicker, section, settings[1]).severity());
  }

  /** 2500 mm over frames of 44 mm: 18 mm slats sag too far under their own weight alone. */
  @ParameterizedTest
  @CsvSource({"slat-sag, 60", "slat-strength, 250", "slat-point-load, 130"})
  void moreBaysAreAdvisedWhereNoSlatThatIsSoldWouldDo(String rule, int load) throws Exception {
    String[] far = {
      "rack.interior-width=2456",
      "timber.slats.section=18x95",
      "slats.per-shelf=4",
      "rack.rail-length=420",
      "load.per-shelf=" + load + "kg"
    };
    Finding finding = finding(rule, far);
    assertFalse(finding.severity() == Severity.NOTE, rule);

    List<String> change = Advice.changes(finding).get(0);

    assertEquals(2, change.size(), finding.advice());
    assertTrue(change.get(0).startsWith("rack.bays="), finding.advice());
    String[] followed = Advice.joined(List.of(far), change).toArray(String[]::new);
    assertSame(Severity.NOTE, finding(rule, followed).severity(), finding.advice());
    Rack rack = Designs.of(POT_STAND, followed).rack();
    double overall = (rack.interiorWidth().inMm() + 44) * rack.bays() - 44;
    assertEquals(2456, overall, rack.bays(), finding.advice());
    String one = "rack.bays=" + (rack.bays() - 1);
    String wider = "rack.interior-width=" + (2500 / (rack.bays() - 1) - 44);
    String[] fewer = Advice.joined(List.of(far), List.of(one, wider)).toArray(String[]::new);
    assertFalse(finding(rule, fewer).severity() == Severity.NOTE, "the fewest that do");
  }

  @Test
  void whereThingsAskForTheWidthFewerOfThemAreAdvised() throws Exception {
    String things = "holds=[{name: pot, width: 90, depth: 90, height: 100, across: 20}]";
    String[] far = {"rack.interior-width=2456", "load.per-shelf=60kg", "slats.overhang=0"};
    String advice = finding("slat-sag", far[0], far[1], things).advice();
    String most = advice.replaceFirst(".*no more than ([0-9]+) mm apart", "$1");

    assertTrue(advice.contains("hold fewer things across"), advice);
    String narrower = "rack.interior-width=" + most;
    assertSame(Severity.NOTE, finding("slat-sag", far[1], things, narrower).severity());
  }

  @Test
  void theThicknessAdvisedIsSold() throws Exception {
    for (int load = 30; load <= 80; load += 5) {
      String advice = finding("slat-sag", "load.per-shelf=" + load + "kg").advice();
      String thickness = advice.replaceFirst("set timber.slats.section=([0-9]+)x89.*", "$1");
      assertTrue(List.of("20", "21", "22", "25", "28", "32", "38").contains(thickness), advice);
    }
  }

  @Test
  void slatsThatDoNotReachOutHaveNoEndsToCheck() throws Exception {
    assertTrue(Designs.findings("slat-overhang-sag", POT_STAND).isEmpty());
    assertTrue(Designs.findings("slat-overhang-strength", POT_STAND).isEmpty());
  }

  @Test
  void aLoadIsSharedByTheSlatsAndTheBaysOfAShelf() throws Exception {
    SlatCase shared = slat("slats.per-shelf=4", "rack.rail-length=400", "rack.bays=2");

    assertEquals(98.0665 / 8 + 0.45454 * 9.80665, shared.evenLoad(), 0.001);
    assertEquals(98.0665 / 2 / 2, shared.oneThing(), 1e-9);
  }

  /** Half of 10.45454 kg in the middle of 101 mm; three halves of half of that over 44 x 44. */
  @Test
  void aRailOfOneBayBearsHalfOfIt() throws Exception {
    RailCase rail = rail();
    double load = 10.45454 * 9.80665 / 2;

    assertEquals(load * 101 / 4 / (44 * 44 * 44 / 6.0), rail.bending().value(), 1e-5);
    assertEquals(1.5 * load / 2 / (44 * 44), rail.shear().value(), 1e-6);
    assertEquals(0.67 * 3.2 * 0.7 / 1.3 / 1.5, rail.shear().most(), 1e-9);
  }

  /** Wood Handbook, eq. 9-2: W L³ / (48 E I) + W L / (4 G A′), with G = E / 16 and A′ = 5/6 A. */
  @Test
  void aRailSagsInTheMiddleAsWorkedOutByHand() throws Exception {
    double load = 10.45454 * 9.80665 / 2;
    double bending = load * 101 * 101 * 101 / (48 * 8000 * 44.0 * 44 * 44 * 44 / 12);
    double shear = load * 101 / (4 * 8000 / 16.0 * 44 * 44 * 5 / 6);

    assertEquals((bending + shear) * 1.48, rail().sag(), 1e-8);
  }

  /**
   * Statics: the middles of slats of 100, 100 and 58 mm lie 50, 170 and 269 mm behind the front end
   * of a rail of 320, so that the front bears more.
   */
  @Test
  void theEndOfARailThatIsNearerToTheSlatsBearsMore() throws Exception {
    Rack rack = UnevenRack.withFrontMargin(0);
    RailCase rail = RailCase.of(rack);
    SlatCase slat = SlatCase.of(rack);
    ShelfRow row = rack.rows().get(0);
    double front =
        slat.evenLoad(row, 0) / 2 * (320 - 50) / 320
            + slat.evenLoad(row, 1) / 2 * (320 - 170) / 320
            + slat.evenLoad(row, 2) / 2 * (320 - 269) / 320;

    assertEquals(front, rail.endForce(), 1e-9);
  }

  /** 10 kg on a shelf of two bays. */
  @Test
  void eachBayCarriesItsShareOfAShelf() throws Exception {
    assertEquals(new Mass(5_000), slat("rack.bays=2").bayMass());
  }

  /**
   * All of 10 kg spread over 60 mm beyond the rail, W: a cantilever, W a³ / (8 E I) + W a / (2 G
   * A′), that turns at its support with the span behind it, a · (M L / (3 E I) + M / (L G A′)), M =
   * W a / 2 (textbook statics; creep as above).
   */
  @Test
  void theTipOfASlatGoesDownAsWorkedOutByHand() throws Exception {
    double w = 98.0665;
    double ei = 8000.0 * 89 * 19 * 19 * 19 / 12.0;
    double ga = 8000 / 16.0 * 89 * 19 * 5 / 6;
    double cantilever = w * 60 * 60 * 60 / (8 * ei) + w * 60 / (2 * ga);
    double turn = w * 30 * 600 / (3 * ei) + w * 30 / (600 * ga);

    assertEquals((cantilever + 60 * turn) * 1.48, slat("slats.overhang=60").tipSag(), 1e-6);
  }

  /** Textbook, a beam over two equal spans: 10/8 of a span's load on the support between them. */
  @Test
  void aRailBetweenTwoBaysBearsThemBoth() throws Exception {
    double outer = rail("load.per-shelf=10kg").sag();
    double perBay = rail("load.per-shelf=20kg", "rack.bays=2", "slats.run=per-bay").sag();
    double through = rail("load.per-shelf=20kg", "rack.bays=2").sag();

    assertEquals(2 * outer, perBay, 1e-9);
    assertEquals(2.5 * outer, through, 1e-9);
  }

  /** The lever of the overhang: the rail bears half of the bay and (1 + 1/8) x 1/4 of it more. */
  @Test
  void anOverhangLoadsTheOuterRailMore() throws Exception {
    double without = rail().sag();

    assertEquals(without * 2 * (0.5 + 0.25 * 1.125), rail("slats.overhang=150").sag(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "slat-strength, 80",
    "slat-point-load, 50",
    "slat-sag, 80",
    "slat-overhang-strength, 90",
    "slat-overhang-sag, 90",
    "rail-strength, 400",
    "rail-sag, 1500",
  })
  void everyChangeThatIsAdvisedClearsTheFinding(String rule, String load) throws Exception {
    String yaml = POT_STAND.replace("10 kg", load + " kg").replace("length: 101", "length: 300");
    String[] reachingOut = {"slats.overhang=150"};
    Finding finding = Designs.finding(rule, yaml, reachingOut);
    assertFalse(finding.severity() == Severity.NOTE, finding.toString());

    List<List<String>> changes = Advice.changes(finding);

    assertTrue(changes.size() >= 2, finding.advice());
    for (List<String> change : changes) {
      String[] settings = Advice.joined(List.of(reachingOut), change).toArray(String[]::new);
      Finding cleared = Designs.finding(rule, yaml, settings);
      assertSame(Severity.NOTE, cleared.severity(), () -> change + " leaves " + cleared);
    }
  }

  @Test
  void aBayThatMustHoldThingsIsNotAdvisedNarrower() throws Exception {
    String heavy = POT_STAND.replace("10 kg", "50 kg");
    String holding = heavy + "holds: [ { name: pot, width: 90, depth: 90, height: 100 } ]\n";

    assertTrue(Designs.finding("slat-sag", heavy).advice().contains("rack.interior-width="));
    assertFalse(Designs.finding("slat-sag", holding).advice().contains("rack.interior-width="));
  }

  private static SlatCase slat(String... settings) throws Exception {
    return SlatCase.of(Designs.of(POT_STAND, settings).rack());
  }

  private static RailCase rail(String... settings) throws Exception {
    return RailCase.of(Designs.of(POT_STAND, settings).rack());
  }

  private static Finding finding(String rule, String... settings) throws Exception {
    return Designs.finding(rule, POT_STAND, settings);
  }
}
