package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.links;
import static org.slatwright.design.sizing.Solving.mm;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.rackfile.Problem;

class WidthChainTest {

  private static final String HERB_RACK =
      """
      slatwright: 1
      title: Herb-drying rack
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        upright: 1500
        rail-length: 320
      slats: { per-shelf: 3 }
      """;

  @Test
  void oneBayTakesTwoFrames() throws Exception {
    // 580 + 2 x 44 = 668
    Rack rack = solve(HERB_RACK, "rack.interior-width=580");

    assertEquals("frame 44, interior 580, frame 44", links(rack, "width"));
    assertEquals(mm("668"), rack.slats().lengths());
  }

  @Test
  void slatsRunThroughAllBaysAndBeyond() throws Exception {
    // 3 x 580 + 4 x 44 + 2 x 25 = 1966
    Rack rack = solve(HERB_RACK, "rack.interior-width=580", "rack.bays=3", "slats.overhang=25");

    assertEquals(
        "overhang 25, frame 44, interior 580, frame 44, interior 580, frame 44, interior 580, frame"
            + " 44, overhang 25",
        links(rack, "width"));
    assertEquals(mm("1966"), rack.slats().lengths());
  }

  @Test
  void slatsOfEachBayMeetOnTheMiddleOfTheInnerFrames() throws Exception {
    // outer 25 + 44 + 580 + 22 = 671, inner 22 + 580 + 22 = 624
    Rack rack =
        solve(
            HERB_RACK,
            "rack.interior-width=580",
            "rack.bays=3",
            "slats.overhang=25",
            "slats.run=per-bay");

    assertEquals(mm("671", "624", "671"), rack.slats().lengths());
  }

  /** Longer than 3 m: common practice, no source. */
  @Test
  void slatsLongerThanBoardsUsuallyAreNoteThatTheyMayMeet() throws Exception {
    // 4 x 695 + 5 x 44 = 3000, 4 x 696 + 220 = 3004; 44 + 696 + 22 = 762, 22 + 696 + 22 = 740
    String bays = "rack.bays=4";
    String wide = "rack.interior-width=696";

    assertEquals(
        "slats that run through all bays are 3004 mm long, and boards of more than 3000 mm are hard"
            + " to find",
        note(solve(HERB_RACK, bays, wide), "slats.run"));
    assertEquals(
        List.of(
            "set slats.run=per-bay to make them 740 to 762 mm, or list what you can get in"
                + " timber.slats.lengths"),
        solve(HERB_RACK, bays, wide).notes().stream()
            .filter(note -> note.subject().equals("slats.run"))
            .map(Finding::advice)
            .toList());
    for (String enough :
        List.of(
            "rack.interior-width=695",
            "slats.run=per-bay",
            "timber.slats.lengths=[{length: 4000}]")) {
      assertEquals("no note on slats.run", note(solve(HERB_RACK, bays, wide, enough), "slats.run"));
    }
    assertEquals(
        "no note on slats.run", note(solve(HERB_RACK, "rack.interior-width=3100"), "slats.run"));
  }

  @Test
  void slatsOfOuterBaysAreAlikeThoughAFrameHasNoExactHalf() throws Exception {
    // a frame of 37.000001 mm has no half in whole nanometres
    Rack rack =
        solve(
            HERB_RACK,
            "timber.frame.section=37.000001 x 44",
            "rack.interior-width=580",
            "rack.bays=2",
            "slats.run=per-bay");

    assertEquals(List.of(new Length(635_500_001), new Length(635_500_001)), rack.slats().lengths());
  }

  @Test
  void anInnerFrameTooNarrowForTwoBearingsIsAnError() throws Exception {
    String[] settings = {
      "timber.frame.section=18 x 44",
      "timber.dowel.diameter=8",
      "rack.interior-width=580",
      "rack.bays=2",
      "slats.run=per-bay"
    };
    Problem problem = problem(HERB_RACK, settings);

    assertEquals(
        "slats that meet on an inner frame bear on half of its rails, 9 mm of 18 mm, and need 10 mm",
        problem.message());
    assertEquals(List.of("slats.run=through"), provenChanges(problem, HERB_RACK, settings));
  }

  @Test
  void slatsBearOnTheRailsAndNotOnWiderUprights() throws Exception {
    String[] settings = {
      "timber.rails.section=19 x 70",
      "timber.dowel.diameter=8",
      "rack.interior-width=580",
      "rack.bays=2",
      "slats.run=per-bay"
    };

    assertEquals(
        "slats that meet on an inner frame bear on half of its rails, 9.5 mm of 19 mm, and need 10"
            + " mm",
        problem(HERB_RACK, settings).message());
  }

  @Test
  void slatsThatWouldTipOffTheirOuterFrameAreAnError() throws Exception {
    // the outer slat is 400 + 44 + 200 + 22 = 666 long; 400 is more than half of it
    String[] settings = {
      "rack.interior-width=200", "rack.bays=2", "slats.run=per-bay", "slats.overhang=400"
    };
    Problem problem = problem(HERB_RACK, settings);

    assertEquals(
        "an overhang of 400 mm is more than half of the outer slats, 666 mm long: they would tip",
        problem.message());
    assertEquals(List.of("slats.overhang=0"), provenChanges(problem, HERB_RACK, settings));
  }

  @Test
  void aRackOfUnknownWidthSaysWhatToGive() {
    assertEquals(
        "nothing says how wide the rack is: give rack.interior-width (the clear width between two"
            + " frames) or holds (what it must take)",
        problem(HERB_RACK).message());
  }
}
