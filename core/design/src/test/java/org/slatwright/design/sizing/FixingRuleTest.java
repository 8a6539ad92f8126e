package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.length;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.rackfile.Problem;

/** Lengths and thicknesses are common practice, no source. */
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

  @Test
  void screwsAreFourMillimetresThick() throws Exception {
    assertEquals(Length.mm(4), solve(BULB_RACK, "joint.fixing.kind=screw").fixing().diameter());
  }

  @Test
  void inThinRailsTheyEndWithinTheWood() throws Exception {
    // slat 30 + rail 44 = 74, less 5 = 69, so 65 and not 2.5 x 30 = 75
    assertEquals(Length.mm(65), solve(BULB_RACK, "timber.slats.section=30 x 95").fixing().length());
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

  @Test
  void aDowelThatLeavesNoRoomBesideItIsWarnedOf() throws Exception {
    // 36 + 2 x 4 = 44 passes, 37 + 2 x 4 = 45 does not
    String screws = "joint.fixing.kind=screw";
    String subject = "joint.fixing.length";

    assertEquals(
        "screws of 45 mm: about 2 1/2 times the slats' thickness",
        note(solve(BULB_RACK, screws, "timber.dowel.diameter=36", "joint.embedment=35"), subject));
    Rack rack = solve(BULB_RACK, screws, "timber.dowel.diameter=37", "joint.embedment=35");

    assertEquals(
        List.of("a screw of 4 mm does not pass beside dowels of 37 mm in rails 44 mm wide"),
        warnings(rack));
  }

  @Test
  void whatEndsAboveTheDowelPassesIt() throws Exception {
    // the dowel lies 22 - 18.5 = 3.5 below the top of the rail, the slat is 18 thick
    String[] settings = {
      "joint.fixing.kind=screw", "timber.dowel.diameter=37", "joint.embedment=35"
    };
    List<String> all = new ArrayList<>(List.of(settings));

    all.add("joint.fixing.length=21.5");
    assertEquals(List.of(), warnings(solve(BULB_RACK, all)));
    all.add("joint.fixing.length=22");
    assertEquals(1, warnings(solve(BULB_RACK, all)).size());
  }

  private static List<String> warnings(Rack rack) {
    return rack.notes().stream()
        .filter(note -> note.severity() == Finding.Severity.WARNING)
        .filter(note -> note.subject().equals("joint.fixing.length"))
        .map(Finding::message)
        .toList();
  }
}
