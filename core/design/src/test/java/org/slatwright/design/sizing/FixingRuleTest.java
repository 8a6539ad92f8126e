package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.sizing.Solving.length;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.rackfile.Problem;

/** Lengths and thicknesses are common practice, no source, unless the test names one. */
class FixingRuleTest {

  private static final String BULB_RACK =
      """
      slatwright: 1
      title: Rack for flower bulbs
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 580
        upright: 1500
        rail-length: 320
      slats: { per-shelf: 3 }
      """;

  @Test
  void twoBradsOfTwoAndAHalfTimesTheSlatHoldEachBearing() throws Exception {
    // 2.5 x 18 = 45
    Rack rack = solve(BULB_RACK);

    assertEquals(
        new Rack.Fixing(Fastener.Kind.BRAD, Length.mm(45), length("1.2"), 2), rack.fixing());
    assertEquals(
        "brads of 45 mm: about 2 1/2 times the slats' thickness",
        note(rack, "joint.fixing.length"));
  }

  @Test
  void theLengthIsRoundedUpToOneThatIsSold() throws Exception {
    // 2.5 x 16 = 40, 2.5 x 16.2 = 40.5
    assertEquals(Length.mm(40), solve(BULB_RACK, "timber.slats.section=16 x 95").fixing().length());
    assertEquals(
        Length.mm(45), solve(BULB_RACK, "timber.slats.section=16.2 x 95").fixing().length());
  }

  /** 7 diameters of 4 mm in the rail: 18 + 28 = 46; the depth is the Wood Handbook's. */
  @Test
  void screwsAreFourMillimetresThickAndSevenTimesThatDeep() throws Exception {
    Rack rack = solve(BULB_RACK, "joint.fixing.kind=screw");

    assertEquals(screws("50", "4"), rack.fixing());
    assertEquals(
        "screws of 50 mm: 7 times their thickness in the rail", note(rack, "joint.fixing.length"));
  }

  /** Beside a dowel of 10: 5 + half + 1 + 3 times its thickness: 20 of 4 mm, 18 of 3.5 mm. */
  @Test
  void inNarrowRailsScrewsAreThinner() throws Exception {
    assertEquals(
        screws("50", "4"),
        solve(BULB_RACK, "joint.fixing.kind=screw", "timber.rails.section=40 x 44").fixing());
    assertEquals(
        screws("45", "3.5"),
        solve(BULB_RACK, "joint.fixing.kind=screw", "timber.rails.section=39.9 x 44").fixing());
  }

  /** Where slats meet, 4 1/2 times its thickness on half a rail: 18 of 4 mm. */
  @Test
  void whereSlatsMeetThereIsRoomForScrews() throws Exception {
    String[] settings = {"rack.bays=2", "slats.run=per-bay", "joint.fixing.kind=screw"};

    assertEquals(screws("50", "4"), solve(BULB_RACK, settings).fixing());
  }

  /** Numbers 4, 6 and 8 of the Wood Handbook, table 8-9: 2.84, 3.51 and 4.17 mm. */
  @ParameterizedTest
  @CsvSource({"7/64, 2.84", "9/64, 3.51", "5/32, 4.17"})
  void screwsInInchesAreTheNearestFractionsOfTheTrade(String fraction, double mm) {
    assertTrue(
        SoldFixing.of(Fastener.Kind.SCREW, Unit.INCH).stream()
            .anyMatch(sold -> sold.diameter().equals(length(fraction + "in"))));
    assertEquals(mm, length(fraction + "in").inMm(), 0.21);
  }

  /** 3 mm, the thinnest sold, would hold fully 7 × 3 below the slat, with 18 + 21 = 39. */
  @Test
  void aScrewGivenTooShortToHoldFullyIsTheThinnest() throws Exception {
    assertEquals(
        screws("20", "3"), solve(BULB_RACK, "joint.fixing={kind: screw, length: 20}").fixing());
  }

  /** Of 3 mm they are sold up to 45 mm, of 3.5 up to 50: from memory. */
  @ParameterizedTest
  @CsvSource({"44, 3", "45, 3.5", "49, 3.5", "50, 4"})
  void throughAThickSlatItIsTheThinnestThatIsSoldLongEnough(int slat, String diameter)
      throws Exception {
    String length = String.valueOf(slat + 2);

    assertEquals(
        screws(length, diameter),
        solve(
                BULB_RACK,
                "timber.slats.section=" + slat + " x 95",
                "joint.fixing={kind: screw, length: " + length + "}")
            .fixing());
  }

  @Test
  void inThinRailsTheyEndWithinTheWood() throws Exception {
    // slat 30 + rail 44 = 74, less 5 = 69, so 65 and not 2.5 x 30 = 75
    Rack rack = solve(BULB_RACK, "timber.slats.section=30 x 95", "joint.fixing.kind=screw");

    assertEquals(Length.mm(65), rack.fixing().length());
  }

  /** 18 gauge to 50 mm, 16 gauge to 64 mm: brad tables of help.mytoolkit.co.uk. */
  @Test
  void longerBradsAreThicker() throws Exception {
    // 2.5 x 20 = 50, 2.5 x 20.2 = 50.5 and so 55
    assertEquals(brads("50", "1.2"), solve(BULB_RACK, "timber.slats.section=20 x 95").fixing());
    assertEquals(brads("55", "1.6"), solve(BULB_RACK, "timber.slats.section=20.2 x 95").fixing());
    assertEquals(brads("60", "1.6"), solve(BULB_RACK, "joint.fixing.length=60").fixing());
  }

  /** 18 gauge to 2 in, 16 gauge to 2 1/2 in: the same tables. */
  @Test
  void longerBradsAreThickerInInches() throws Exception {
    // 2.5 x 13/16 = 2 1/32 and so 2 1/4
    String[] settings = {
      "units=in",
      "timber={frame: {section: 2 x 2}, slats: {section: 13/16 x 4}}",
      "rack={interior-width: 24, upright: 60, rail-length: 13}"
    };

    assertEquals(brads("2 1/4in", "1/16in"), solve(BULB_RACK, settings).fixing());
  }

  @Test
  void whereNoBradIsLongEnoughScrewsAreAdvised() throws Exception {
    // 2.5 x 28 = 70, and 28 + 70 leaves room for it
    Rack rack = solve(BULB_RACK, "timber.slats.section=28 x 95", "timber.rails.section=44 x 70");

    assertEquals(brads("64", "1.6"), rack.fixing());
    assertEquals(
        List.of(
            "brads of 64 mm, and no longer ones of 1.6 mm are sold: 70 mm would hold slats of 28 mm"
                + " better"),
        warnings(rack));
  }

  @Test
  void bradsAsThinAsGivenAreNotTakenLongerThanTheyAreSold() throws Exception {
    Rack rack = solve(BULB_RACK, "timber.slats.section=22 x 95", "joint.fixing.diameter=1.2");

    assertEquals(brads("50", "1.2"), rack.fixing());
    assertEquals(1, warnings(rack).size());
  }

  @Test
  void lengthsThatAreGivenAreNotShortened() throws Exception {
    Rack rack = solve(BULB_RACK, "timber.rails.section=44 x 70", "joint.fixing.length=80");

    assertEquals(brads("80", "1.6"), rack.fixing());
    assertEquals(List.of(), warnings(rack));
  }

  @Test
  void slatsThickerThanTheLongestBradAreAnErrorThatNamesScrews() throws Exception {
    String[] settings = {"timber.slats.section=65 x 95", "timber.rails.section=44 x 120"};
    Problem problem = problem(BULB_RACK, settings);

    assertEquals(
        "the longest brads sold, 64 mm, do not reach the rail through slats of 65 mm",
        problem.message());
    assertEquals(List.of("joint.fixing.kind=screw"), provenChanges(problem, BULB_RACK, settings));
  }

  @Test
  void whatIsGivenStands() throws Exception {
    Rack rack =
        solve(BULB_RACK, "joint.fixing={kind: screw, length: 35, diameter: 3.5, per-end: 1}");

    assertEquals(
        new Rack.Fixing(Fastener.Kind.SCREW, Length.mm(35), length("3.5"), 1), rack.fixing());
  }

  @Test
  void aBradThatComesOutBelowIsAnError() throws Exception {
    Problem problem = problem(BULB_RACK, "joint.fixing.length=63");

    assertEquals(
        "a brad of 63 mm comes out below: slat and rail are 62 mm together", problem.message());
    assertEquals(
        List.of("joint.fixing.length=45"),
        provenChanges(problem, BULB_RACK, "joint.fixing.length=63"));
    solve(BULB_RACK, "joint.fixing.length=62");
  }

  @Test
  void aBradThatDoesNotReachTheRailIsAnError() throws Exception {
    Problem problem = problem(BULB_RACK, "joint.fixing.length=18");

    assertEquals(
        "a brad of 18 mm does not reach the rail through a slat of 18 mm", problem.message());
    assertEquals(
        List.of("joint.fixing.length=45"),
        provenChanges(problem, BULB_RACK, "joint.fixing.length=18"));
  }

  private static Rack.Fixing screws(String length, String diameter) {
    return new Rack.Fixing(Fastener.Kind.SCREW, length(length), length(diameter), 2);
  }

  private static Rack.Fixing brads(String length, String diameter) {
    return new Rack.Fixing(Fastener.Kind.BRAD, length(length), length(diameter), 2);
  }

  private static List<String> warnings(Rack rack) {
    return rack.notes().stream()
        .filter(note -> note.severity() == Finding.Severity.WARNING)
        .filter(note -> note.subject().equals("joint.fixing.length"))
        .map(Finding::message)
        .toList();
  }
}
