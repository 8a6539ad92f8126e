package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/** A stand for orchids with a shelf on each of four rails of 44 x 44 in two frames. */
class DowelRulesTest {

  private static final String ORCHIDS =
      """
      slatwright: 1
      title: Orchid stand
      timber:
        frame: { section: 44 x 44, species: ponderosa pine }
        slats: { section: 18 x 70 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 556
        rail-length: 319
        foot: 100
        openings: [ 300, 300, 300 ]
        top: 30
      slats: { per-shelf: 4, gap: 13 }
      load: { per-shelf: 12 kg }
      """;

  private static final double G = 9.80665;

  /** Half the stock at most: WOOD magazine, tips for dowel joinery. (44 - 23) / 2 = 10.5. */
  @Test
  void aDowelOfMoreThanHalfTheStockIsWarnedOf() throws Exception {
    Finding finding = Designs.finding("dowel-diameter", ORCHIDS, "timber.dowel.diameter=23");

    assertEquals(Severity.WARNING, finding.severity());
    assertTrue(finding.message().endsWith("only 10.5 mm of wood on each side"));
    assertEquals("23 mm", finding.value());
    assertEquals("at most 22 mm", finding.limit());
    assertEquals("set timber.dowel.diameter=12", finding.advice());
    assertEquals(
        List.of(), Designs.findings("dowel-diameter", ORCHIDS, "timber.dowel.diameter=22"));
  }

  /** 44 / 6 = 7.3: a third of the stock is asked for by joints of boards, not by these. */
  @Test
  void aThinDowelIsLeftToTheRulesThatReckonWhatItBears() throws Exception {
    assertEquals(List.of(), Designs.findings("dowel-diameter", ORCHIDS, "timber.dowel.diameter=6"));
  }

  /** The dowel runs along the depth of the upright, which is no matter. */
  @ParameterizedTest
  @ValueSource(
      strings = {"frame.section=30 x 44", "rails.section=30 x 70", "rails.section=44 x 30"})
  void theThinnestStockAcrossADowelCounts(String section) throws Exception {
    // (30 - 16) / 2 = 7
    Finding finding =
        Designs.finding("dowel-diameter", ORCHIDS, "timber." + section, "timber.dowel.diameter=16");

    assertTrue(finding.message().endsWith("only 7 mm of wood on each side"), section);
  }

  @Test
  void theDepthOfTheUprightIsNotAcrossTheDowel() throws Exception {
    assertEquals(
        List.of(),
        Designs.findings(
            "dowel-diameter",
            ORCHIDS,
            "timber.frame.section=44 x 30",
            "timber.rails.section=44 x 44",
            "timber.dowel.diameter=16"));
  }

  /** Three diameters: WOOD magazine; 3 x 10 = 30. */
  @Test
  void dowelsLieThreeDiametersDeepInBothParts() throws Exception {
    assertEquals(List.of(), Designs.findings("dowel-embedment", ORCHIDS, "joint.embedment=30"));
    Finding rails = Designs.finding("dowel-embedment", ORCHIDS, "joint.embedment=29");
    assertEquals("29 mm", rails.value());
    assertTrue(rails.advice().startsWith("set joint.embedment=30"), rails.advice());

    Finding uprights =
        Designs.finding(
            "dowel-embedment",
            ORCHIDS,
            "timber.frame.section=44 x 29",
            "timber.rails.section=44 x 44");
    assertEquals("29 mm", uprights.value());
    assertTrue(uprights.message().contains("uprights"));
  }

  /**
   * 1.5 diameters to an edge, 3 to the next dowel and to the end: two of 10 mm in 44 mm are 22
   * apart; one of 15 mm is 22 from the edge; the lowest of a rail 5 mm above the floor is 27 from
   * the foot.
   */
  @ParameterizedTest
  @CsvSource({
    "joint.dowels=2, 'uprights U', 22 mm, 'at least 30 mm'",
    "timber.dowel.diameter=15, 'uprights U', 22 mm, 'at least 22.5 mm'",
    "rack.foot=5, 'uprights U', 27 mm, 'at least 30 mm'"
  })
  void woodIsLeftAroundEveryHole(String setting, String where, String value, String limit)
      throws Exception {
    Finding finding = Designs.finding("dowel-edges", ORCHIDS, setting);

    assertEquals(Severity.WARNING, finding.severity());
    assertTrue(finding.message().endsWith(where), finding.message());
    assertEquals(value, finding.value());
    assertEquals(limit, finding.limit());
    assertEquals(List.of(), Designs.findings("dowel-edges", ORCHIDS));
  }

  /** A rail of 1 5/16 in is three diameters wide; half of it is no whole number of nanometres. */
  @Test
  void aRailExactlyThreeDiametersWideLeavesEnoughWood() throws Exception {
    String rack =
        """
        slatwright: 1
        title: Bulb stand
        units: in
        timber:
          frame: { section: 1 23/64 x 1 11/32 }
          rails: { section: 1 5/16 x 1 3/4 }
          slats: { section: 31/64 x 1 1/2 }
          dowel: { diameter: 7/16 }
        rack: { interior-width: 11 13/16, rail-length: 6 5/16, upright: 19 11/16, foot: 7/16 }
        slats: { per-shelf: 1 }
        joint: { dowels: 1, embedment: 13/16 }
        """;
    assertEquals(List.of(), Designs.findings("dowel-edges", rack));
  }

  /**
   * 12 kg and four slats: half of the shelf on each frame, half of that on each end. The slats
   * weigh 448 kg/m³ (Wood Handbook, chapter 4): 4 x 70 x 18 x 600 mm weigh 1.355 kg. The inner
   * frame of two bays bears as much more as textbooks give a beam over two spans: 10/8 of a bay.
   */
  @Test
  void dowelsBearTheirShareOfTheShelf() throws Exception {
    double slats = 4 * 0.07 * 0.018 * 0.6 * 448;

    assertEquals((12 + slats) * G / 4, endForce(), 0.01);
    assertEquals((6 + slats) * 1.25 * G / 2, endForce("rack.bays=2"), 0.01);
    assertEquals((6 + slats) * G / 2, endForce("rack.bays=2", "slats.run=per-bay"), 0.01);
  }

  /**
   * Shear of american beech 13.9 MPa (Wood Handbook, table 5-3) over 4, 3/4 of the area of 10 mm:
   * 204.7 N. Across the grain C16 (EN 338) bears 2.2 x 0.7 / 1.3 / 1.5 = 0.790 MPa (EN 1995-1-1):
   * 276.4 N on 10 x 35 mm, and 157.9 N on 20 mm of depth.
   */
  @Test
  void dowelsBearWhatTheirWoodAndThatOfTheRailDo() throws Exception {
    assertEquals(204.7, joint().safeForce(), 0.1);
    assertEquals(2 * 204.7, joint("joint.dowels=2").safeForce(), 0.2);
    assertEquals(157.9, joint("joint.embedment=20").safeForce(), 0.1);
  }

  /**
   * By hand: across the grain C16 bears a short push of 2.2 x 0.9 / 1.3 / 1.5 = 1.0154 MPa (EN
   * 1995-1-1). A joint of one dowel bears 1.0154 x 44 x 22² / 2 = 10.81 N·m, since the block would
   * reach the dowel (1.0154 x 44 x 22 = 982.9 N, less than it may bear). Uprights are 100 + 4 x 44
   * + 4 x 18 + 900 + 30 = 1278 mm. Sixteen joints: 16 x 10.81 / 1.278 = 135.4 N.
   */
  @Test
  void theJointsOfAllFramesTakeThePushTogether() throws Exception {
    assertEquals(135.4, new PushCase(joint()).taken(), 0.1);
    assertEquals(135.4 * 3 / 2, new PushCase(joint("rack.bays=2")).taken(), 0.1);
    Finding finding = Designs.finding("frame-push", ORCHIDS);
    assertEquals(Severity.NOTE, finding.severity());
    assertEquals("at least 89 N", finding.limit());
  }

  /**
   * As by hand above, 10 811.8 N·mm a joint; two shelves in two frames have eight: 88.96 N at an
   * upright of 972.2 mm, and half of that at 1944.5. Uprights are 254 mm longer than the opening.
   */
  @ParameterizedTest
  @CsvSource({"718, NOTE", "719, WARNING", "1690, WARNING", "1691, ERROR"})
  void jointsThatTakeLessThanThePushAreWarnedOfAndHalfOfItIsAnError(int opening, Severity severity)
      throws Exception {
    Finding finding = Designs.finding("frame-push", ORCHIDS, "rack.openings=[" + opening + "]");

    assertEquals(severity, finding.severity(), finding.toString());
    assertEquals(severity == Severity.NOTE, finding.advice().isEmpty());
  }

  /**
   * The dowel of 204.7 N (above) bears a quarter of load and slats: (204.7 × 4 / 9.80665) - 1.355 =
   * 82.1 kg; and 1.5 times that force with 123.9 kg.
   */
  @ParameterizedTest
  @CsvSource({"82, NOTE", "82.3, WARNING", "123.7, WARNING", "124.1, ERROR"})
  void dowelsThatBearMoreThanTheyMayAreWarnedOfAndOneAndAHalfTimesIsAnError(
      String load, Severity severity) throws Exception {
    Finding finding = Designs.finding("dowel-shear", ORCHIDS, "load.per-shelf=" + load + "kg");

    assertEquals(severity, finding.severity(), finding.toString());
  }

  /**
   * A dowel 12 mm deep may be drawn with 1.2 × π × 10 × 12 = 452.4 N of its glue (our own choice),
   * and with a quarter of 0.834 · D · L^0.89 · (0.95·S1 + S2) in inches and psi (Eckelman 1969,
   * from memory), of ponderosa pine 7.8 MPa and beech 13.9 (Wood Handbook, table 5-3). It is pulled
   * with F of M = F·(22 - F / (2 × 1.0154 × 44)), M the push on 8 joints (above): 452.4 N come with
   * 7662 N·mm and an opening of 435 mm, twice that with 10 744 and 712.
   */
  @ParameterizedTest
  @CsvSource({"434, NOTE", "436, WARNING", "711, WARNING", "713, ERROR"})
  void dowelsThatArePulledMoreThanTheyMayAreWarnedOfAndTwiceIsAnError(
      int opening, Severity severity) throws Exception {
    Finding finding =
        Designs.finding(
            "dowel-withdrawal", ORCHIDS, "rack.openings=[" + opening + "]", "joint.embedment=12");

    assertEquals(severity, finding.severity(), finding.toString());
    assertEquals("at most 452 N", finding.limit());
  }

  /**
   * ANSI/BIFMA X5.9 (from a secondary source): 20 lbf. With 135.4 N on 982.9 N of pull (above), all
   * in one.
   */
  @Test
  void aPushDrawsAtTheDowels() throws Exception {
    double share = 88.964 / 135.4;

    assertEquals(982.9 * (1 - Math.sqrt(1 - share)), new PushCase(joint()).pull(), 1);
  }

  /**
   * Per-bay slats bear on half of an inner rail, one bay loaded: the middle of a triangle of
   * pressure on 22 mm lies 22 - 22 / 3 = 14.67 mm from the middle of the rail.
   */
  @Test
  void slatsThatEndOnARailTurnIt() throws Exception {
    double slats = 4 * 0.07 * 0.018 * 0.6 * 448;
    RailCase rail = rail("rack.bays=2", "slats.run=per-bay");

    assertEquals((6 + slats) * G / 4 * 44 / 3, rail.endTwist(), 0.2);
    assertEquals((12 + slats) * G / 4 * 44 / 6, rail().endTwist(), 0.2);
  }

  @Test
  void oneDowelLetsAHeavilyLoadedRailTurnAndTwoHoldIt() throws Exception {
    Finding finding = Designs.finding("rail-twist", ORCHIDS, "load.per-shelf=40kg");

    assertEquals(Severity.WARNING, finding.severity());
    assertTrue(finding.advice().contains("joint.dowels=2"), finding.advice());
    assertTrue(finding.advice().contains("timber.rails.section=44x60"), finding.advice());
    assertTrue(joint("joint.dowels=2").safeTwist() > 5 * joint().safeTwist());
  }

  /** Each change is tried alone, and every rule that is not to be found must then be well. */
  @ParameterizedTest
  @CsvSource({
    "dowel-diameter, timber.dowel.diameter=23",
    "dowel-embedment, joint.embedment=20",
    "dowel-edges, joint.dowels=2",
    "dowel-edges, rack.foot=5",
    "dowel-shear, load.per-shelf=120kg",
    "rail-twist, load.per-shelf=40kg",
    "frame-push, 'rack.openings=[300, 400, 900]'",
    "frame-push, 'rack.openings=[1200]'",
    "dowel-withdrawal, 'rack.openings=[1200]'"
  })
  void theChangeThatIsAdvisedClearsTheFinding(String rule, String setting) throws Exception {
    Finding finding = Designs.finding(rule, ORCHIDS, setting);

    assertFalse(finding.severity() == Severity.NOTE, finding::toString);
    assertFalse(Advice.changes(finding).isEmpty(), finding::toString);
    for (List<String> change : Advice.changes(finding)) {
      List<String> settings = Advice.joined(List.of(setting), change);
      assertTrue(
          Designs.findings(rule, ORCHIDS, settings.toArray(String[]::new)).stream()
              .allMatch(found -> found.severity() == Severity.NOTE),
          () -> change + " does not clear " + finding);
    }
  }

  /** A frame's joints are all alike, so that a rule tells of them once. */
  @Test
  void aRuleTellsOfAllJointsAtOnce() throws Exception {
    List<Finding> findings =
        Checks.of(Designs.of(ORCHIDS, "joint.dowels=2", "joint.embedment=20", "rack.foot=0"));

    for (String rule : Arrays.asList("dowel-edges", "dowel-embedment", "frame-push")) {
      assertEquals(1, findings.stream().filter(found -> found.rule().equals(rule)).count(), rule);
    }
  }

  private static double endForce(String... settings) throws Exception {
    return rail(settings).endForce();
  }

  private static RailCase rail(String... settings) throws Exception {
    return RailCase.of(Designs.of(ORCHIDS, settings).rack());
  }

  private static JointCase joint(String... settings) throws Exception {
    return JointCase.of(Designs.of(ORCHIDS, settings).rack());
  }
}
