package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;

class FixingStrengthTest {

  private static final String PINE = "timber.frame.species=ponderosa pine";

  /** The worked example of equation 8-1: 138.01 N for 21 mm of 1.2 mm in wood of 0.40; 14 D. */
  @Test
  void aBradOfTheWorkedExampleHoldsAsMuch() throws Exception {
    String[] brads = {PINE, "joint.fixing={length: 39, diameter: 1.2}"};
    FixingCase fixing = new FixingCase(Designs.of(ORCHIDS, brads).rack());

    assertEquals(138.01, fixing.withdrawal(), 0.005);
    assertEquals(138.01 / 6, fixing.pull(1).most(), 0.001);
    Finding finding = Designs.finding("fixing-penetration", ORCHIDS, brads);
    assertEquals("21 mm", finding.value());
    assertEquals("at least 17 mm", finding.limit());
    assertEquals(Severity.NOTE, finding.severity());
  }

  /** Ponderosa: 14 × 1.2 = 16.8, so 34.8 through 18 mm. */
  @ParameterizedTest
  @CsvSource({"34.7, WARNING", "34.8, NOTE"})
  void aBradLessDeepThanFourteenDiametersIsWarnedOf(String length, Severity severity)
      throws Exception {
    String fixing = "joint.fixing={length: " + length + ", diameter: 1.2}";

    assertEquals(severity, Designs.finding("fixing-penetration", ORCHIDS, PINE, fixing).severity());
  }

  @Test
  void theDepthAdvisedIsDeepEnough() throws Exception {
    String fixing = "joint.fixing={length: 25, diameter: 1.6}";
    Finding finding = Designs.finding("fixing-penetration", ORCHIDS, fixing);
    assertEquals(Severity.WARNING, finding.severity());

    List<List<String>> changes = Advice.changes(finding);
    assertFalse(changes.isEmpty(), finding.advice());
    for (List<String> change : changes) {
      assertHolds("fixing-penetration", Advice.joined(List.of(fixing), change));
    }
  }

  /** The rack hangs on two slats with two brads on each of two frames: eight. */
  @Test
  void aLiftedRackHangsOnEightBrads() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Finding finding = new FixingWithdrawal().check(design).findFirst().orElseThrow();
    double each = design.quantities().mass().kg() * 9.80665 / 8;

    assertEquals(new Figures(design.rack().lengths()).force(each), finding.value());
  }

  @Test
  void prisingIsSaidWhereSlatsReachOutAlone() throws Exception {
    assertEquals(1, Designs.findings("fixing-withdrawal", ORCHIDS).size());
    String[] heavy = {"slats.overhang=300", "load.per-shelf=300kg"};
    Finding prised = Designs.findings("fixing-withdrawal", ORCHIDS, heavy).get(1);

    assertFalse(prised.severity() == Severity.NOTE, prised.toString());
    assertEquals(2, Advice.changes(prised).size(), prised.advice());
  }

  /**
   * By hand: 24 bearings of two brads at a mean lever of half the rail, 22 mm, all of the edge's
   * crushing left out, hold no less than is reckoned. 1.6: load duration factor for ten minutes,
   * NDS table 2.3.2, from memory.
   */
  @Test
  void thePushIsThatOfVirtualWorkOverAllBearings() throws Exception {
    Design design = Designs.of(ORCHIDS);
    Rack rack = design.rack();
    double pull = 1.6 * new FixingCase(rack).withdrawal() / 6;
    double height = rack.upright().length().inMm();
    double byHand = 24 * 2 * pull * 22 / height;
    String value = Designs.finding("sideways-push", ORCHIDS).value();
    double reckoned = Double.parseDouble(value.replace(" N", ""));

    assertTrue(reckoned <= byHand + 0.5 && reckoned > 0.95 * byHand, value + ", " + byHand);
  }

  @Test
  void whatIsAdvisedAgainstLeaningHoldsThePush() throws Exception {
    Finding finding = Designs.finding("sideways-push", ORCHIDS);
    assertEquals(Severity.WARNING, finding.severity());
    assertTrue(finding.advice().contains("brace"), finding.advice());

    List<List<String>> changes = Advice.changes(finding);
    assertFalse(changes.isEmpty(), finding.advice());
    for (List<String> change : changes) {
      assertHolds("sideways-push", change);
    }
  }

  /** Common practice, no source: 1 1/2 diameters to an edge in a pilot hole. */
  @ParameterizedTest
  @CsvSource({"1.2, NOTE", "12, WARNING"})
  void aScrewTooThickForTheEdgeSplitsIt(String diameter, Severity severity) throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting",
            ORCHIDS,
            "joint.fixing={kind: screw, length: 45, diameter: " + diameter + "}");

    assertEquals(severity, finding.severity(), finding.toString());
    assertEquals(severity == Severity.NOTE, finding.advice().contains("pilot holes of"));
  }

  /**
   * EN 1995-1-1, table 8.2 (from memory), unloaded ends: 10 diameters up to 420 kg/m³, 15 up to
   * 500, and above that always drilled. The brads are 14 mm from the ends of slats. EN 338: C16
   * 310, D18 475, D30 530 kg/m³.
   */
  @ParameterizedTest
  @CsvSource({
    "norway spruce C16, 1.2, false",
    "norway spruce C16, 1.6, true",
    "white oak D18, 0.9, false",
    "white oak D18, 1.2, true",
    "white oak D30, 0.9, true"
  })
  void aThinBradInLightWoodNeedsNoPilotHole(String species, String diameter, boolean drilled)
      throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting",
            ORCHIDS,
            "timber.frame.species=" + species,
            "joint.fixing={length: 45, diameter: " + diameter + "}");

    assertEquals("14 mm", finding.value());
    assertEquals(drilled, finding.advice().contains("drill"), finding.toString());
  }

  /** In rails of 32 mm a thinner screw is put further from the dowel, nearer to the slat's end. */
  @ParameterizedTest
  @CsvSource({"44 x 44, 6", "32 x 44, 4"})
  void aScrewThinnedAsAdvisedNoLongerSplits(String section, String diameter) throws Exception {
    List<String> thick =
        List.of(
            "timber.frame.section=" + section,
            "joint.fixing={kind: screw, length: 45, diameter: " + diameter + "}");
    Finding finding = Designs.finding("fixing-splitting", ORCHIDS, thick.toArray(String[]::new));

    assertEquals(Severity.WARNING, finding.severity());
    assertFalse(Advice.changes(finding).isEmpty(), finding.advice());
    assertHolds("fixing-splitting", Advice.joined(thick, Advice.changes(finding).get(0)));
  }

  /** Common practice, from memory: 0.75 of 4 mm in softwood, 0.9 in hardwood. */
  @ParameterizedTest
  @CsvSource({"norway spruce, 3 mm", "white oak, 3.6 mm"})
  void hardwoodTakesAWiderPilotHole(String species, String pilot) throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-splitting",
            ORCHIDS,
            "timber.frame.species=" + species,
            "joint.fixing={kind: screw, length: 45, diameter: 4}");

    assertTrue(finding.advice().contains("pilot holes of " + pilot), finding.advice());
  }

  @ParameterizedTest
  @ValueSource(strings = {"rack.brace=back", "rack.stands=anchored"})
  void aRackThatIsHeldSidewaysIsNotWarnedOfLeaning(String held) throws Exception {
    Finding free = Designs.finding("sideways-push", ORCHIDS);
    Finding finding = Designs.finding("sideways-push", ORCHIDS, held);

    assertTrue(free.advice().contains("set " + held), free.advice());
    assertEquals(Severity.NOTE, finding.severity());
    assertEquals(free.value(), finding.value(), "what the slats alone would hold");
    assertEquals("", finding.advice());
    assertEquals(held.equals("rack.brace=back"), finding.message().contains("not drawn"));
  }

  /** Load duration factor for ten minutes: NDS, table 2.3.2 (from memory). */
  @Test
  void whatIsBorneForAMomentIsMoreThanWhatLasts() throws Exception {
    FixingCase fixing = new FixingCase(Designs.of(ORCHIDS).rack());

    assertEquals(1.6 * fixing.pull(1).most(), fixing.shortPull(1).most(), 1e-9);
    assertEquals(fixing.pull(1).failing(), fixing.shortPull(1).failing(), 1e-9);
  }

  private static void assertHolds(String rule, List<String> settings) throws Exception {
    List<Finding> found = Designs.findings(rule, ORCHIDS, settings.toArray(String[]::new));
    assertEquals(Severity.NOTE, found.get(0).severity(), settings + " " + found);
  }
}
