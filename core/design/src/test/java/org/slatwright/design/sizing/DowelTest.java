package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.length;
import static org.slatwright.design.sizing.Solving.links;
import static org.slatwright.design.sizing.Solving.mm;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Problem;

class DowelTest {

  private static final String BREAD_RACK =
      """
      slatwright: 1
      title: Bread-proving rack
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
      rack:
        interior-width: 580
        upright: 1500
        rail-length: 320
      slats: { per-shelf: 3 }
      """;

  /**
   * Two edges of 1.5 diameters take three, so that 30 / 3 = 10 and 28 / 3 = 9.3 are the most:
   * common practice, no source, as are the sizes.
   */
  @Test
  void theThickestUsualDowelIsTakenThatLeavesWoodAroundIt() throws Exception {
    assertEquals(Length.mm(12), solve(BREAD_RACK).joint().diameter());
    assertEquals(
        Length.mm(10), solve(BREAD_RACK, "timber.frame.section=30 x 44").joint().diameter());
    assertEquals(
        Length.mm(8), solve(BREAD_RACK, "timber.frame.section=44 x 28").joint().diameter());
    assertEquals(
        "dowels of 12 mm: the thickest usual size that leaves enough wood around it",
        note(solve(BREAD_RACK), "timber.dowel.diameter"));
  }

  @Test
  void stockTooThinForAnyUsualDowelAsksForOne() {
    Problem problem = problem(BREAD_RACK, "timber.frame.section=44 x 11", "joint.fixing.length=25");

    assertEquals(
        "no usual dowel is thin enough for this stock (at most a third of 11 mm): give"
            + " timber.dowel.diameter",
        problem.message());
  }

  @Test
  void aDowelAsThickAsTheStockIsAnErrorWithBothNumbers() throws Exception {
    Problem problem = problem(BREAD_RACK, "timber.dowel.diameter=44");

    assertEquals(
        "a dowel of 44 mm is not thinner than the stock it joins, 44 mm", problem.message());
    assertEquals(
        List.of("timber.dowel.diameter=12"),
        provenChanges(problem, BREAD_RACK, "timber.dowel.diameter=44"));
  }

  /** 3 1/2 diameters, a rule of our own; glue room of 1/16 in or 2 mm: WOOD magazine, as above. */
  @Test
  void aDowelReachesThreeAndAHalfDiametersIntoTheRail() throws Exception {
    Rack rack = solve(BREAD_RACK, "timber.dowel.diameter=10");

    assertEquals("upright 44, embedment 35*", links(rack, "dowel"));
    assertEquals(
        "dowels reach 35 mm into the rails: 3 1/2 diameters", note(rack, "joint.embedment"));
    assertEquals(Length.mm(79), rack.joint().length());
    assertEquals(Length.mm(37), rack.joint().holeDepth());
    assertEquals(mm("22"), rack.joint().heights());
  }

  @Test
  void theEmbeddedPartIsRoundedUpToTheIncrement() throws Exception {
    // 3.5 x 9.5 = 33.25
    Rack rack = solve(BREAD_RACK, "timber.dowel.diameter=9.5");

    assertEquals(Length.mm(34), rack.joint().embedment());
    assertEquals(
        "dowels reach 34 mm into the rails: at least 3 1/2 diameters",
        note(rack, "joint.embedment"));
  }

  @Test
  void inAShortRailTheDowelsLeaveADiameterOfWoodBetweenTheirHoles() throws Exception {
    // (76 - 10) / 2 - 2 = 31
    Rack rack = solve(BREAD_RACK, shortRail(76));

    assertEquals(Length.mm(31), rack.joint().embedment());
    assertEquals(
        "dowels reach only 31 mm into the rails, which are too short for 3 1/2 diameters, 35 mm",
        note(rack, "joint.embedment"));
  }

  @Test
  void aDowelBoughtCutDecidesHowDeepItReaches() throws Exception {
    // 80 - 44 = 36
    Rack rack = solve(BREAD_RACK, "timber.dowel={diameter: 10, length: 80}");

    assertEquals("upright 44, embedment 36*", links(rack, "dowel"));
    assertEquals(Length.mm(38), rack.joint().holeDepth());
  }

  @Test
  void aDowelThatEndsWithinTheUprightIsAnError() throws Exception {
    String setting = "timber.dowel={diameter: 10, length: 40}";
    Problem problem = problem(BREAD_RACK, setting);

    assertEquals(
        "a dowel of 40 mm does not reach through the upright, which is 44 mm deep",
        problem.message());
    // 44 + 3 1/2 x 10
    assertEquals(List.of("timber.dowel.length=79"), provenChanges(problem, BREAD_RACK, setting));
  }

  @Test
  void aDowelFarTooDeepIsProposedAsDeepAsUsual() throws Exception {
    String[] tooDeep = {"timber.dowel.diameter=10", "joint.embedment=500"};
    Problem problem = problem(BREAD_RACK, tooDeep);

    assertEquals(List.of("joint.embedment=35"), provenChanges(problem, BREAD_RACK, tooDeep));
  }

  @Test
  void aDowelLengthThatDisagreesWithItsDepthNamesBothChanges() throws Exception {
    String[] settings = {"timber.dowel={diameter: 10, length: 80}", "joint.embedment=30"};
    Problem problem = problem(BREAD_RACK, settings);

    assertEquals(
        "a dowel through 44 mm of upright and 30 mm into the rail is 74 mm long; 80 mm is 6 mm too"
            + " long",
        problem.message());
    assertEquals(
        List.of("joint.embedment=36", "timber.dowel.length=74"),
        provenChanges(problem, BREAD_RACK, settings));
  }

  @Test
  void holesThatMeetInTheRailAreAnError() throws Exception {
    // 2 x (38 + 2) = 80; (80 - 10) / 2 - 2 = 33
    String[] settings = shortRail(80, "joint.embedment=38");
    Problem problem = problem(BREAD_RACK, settings);

    assertEquals("holes 40 mm deep from both ends meet in a rail of 80 mm", problem.message());
    assertEquals(List.of("joint.embedment=33"), provenChanges(problem, BREAD_RACK, settings));
  }

  @Test
  void twoDowelsStandOnTheQuarterPoints() throws Exception {
    // 70 / 2 = 35 apart, (70 - 35) / 2 = 17.5 from each edge
    Rack rack = solve(BREAD_RACK, "timber.rails.section=44 x 70", "joint.dowels=2");

    assertEquals(List.of(length("17.5"), length("52.5")), rack.joint().heights());
  }

  @Test
  void theDistanceOfTwoDowelsIsRoundedAndTheMiddleKept() throws Exception {
    // 69.3 / 2 = 34.65, so 34 apart, (69.3 - 34) / 2 = 17.65 from each edge
    Rack rack = solve(BREAD_RACK, "timber.rails.section=44 x 69.3", "joint.dowels=2");

    assertEquals(List.of(length("17.65"), length("51.65")), rack.joint().heights());
  }

  @Test
  void twoDowelsAreChosenThinnerWhereTheRailIsLow() throws Exception {
    // two edges of 1.5 and 3 between: 44 / 6 = 7.3, and 60 / 6 = 10
    assertEquals(Length.mm(6), solve(BREAD_RACK, "joint.dowels=2").joint().diameter());
    assertEquals(
        Length.mm(10),
        solve(BREAD_RACK, "joint.dowels=2", "timber.rails.section=44 x 60").joint().diameter());
  }

  @Test
  void twoDowelsStandThreeDiametersApartWhereTheIncrementWouldBringThemNearer() throws Exception {
    // 48 / 2 = 24 = 3 x 8; on an increment of 5 mm it would be 20
    Rack rack = solve(BREAD_RACK, "increment=5", "timber.rails.section=44 x 48", "joint.dowels=2");

    assertEquals(Length.mm(8), rack.joint().diameter());
    assertEquals(mm("12", "36"), rack.joint().heights());
  }

  @Test
  void aRailTooLowForTwoUsualDowelsAsksForOne() throws Exception {
    String[] settings = {"joint.dowels=2", "timber.rails.section=44 x 35"};
    Problem problem = problem(BREAD_RACK, settings);

    assertEquals(
        "no usual dowel is thin enough for this stock (at most a sixth of the height of the rail,"
            + " 35 mm): give timber.dowel.diameter",
        problem.message());
    assertEquals(List.of("joint.dowels=1"), provenChanges(problem, BREAD_RACK, settings));
  }

  @Test
  void aRailNearTheFloorHasThinnerDowels() throws Exception {
    // 5 + 44 / 2 = 27 to the foot: 3 x 8 = 24, 3 x 10 = 30
    assertEquals(Length.mm(8), solve(BREAD_RACK, "rack.foot=5").joint().diameter());
  }

  @Test
  void twoDowelsTooThickForTheRailNameEachSingleChange() throws Exception {
    String[] settings = {"joint.dowels=2", "timber.dowel.diameter=12"};
    Problem problem = problem(BREAD_RACK, settings);

    assertEquals(
        "two dowels of 12 mm do not fit a rail 44 mm high: they need more than 15 mm between their"
            + " centres and half a diameter of wood above and below",
        problem.message());
    assertEquals(
        List.of("joint.dowels=1", "timber.dowel.diameter=6"),
        provenChanges(problem, BREAD_RACK, settings));
  }

  /** One narrow slat on a short rail. */
  private static String[] shortRail(int rail, String... more) {
    return Stream.concat(
            Stream.of(
                "timber.dowel.diameter=10",
                "timber.slats.section=18 x 60",
                "slats.per-shelf=1",
                "rack.rail-length=" + rail),
            Stream.of(more))
        .toArray(String[]::new);
  }
}
