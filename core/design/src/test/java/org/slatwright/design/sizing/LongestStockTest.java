package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.problems;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.design.rackfile.Problem;

/** With 10 mm squared off each end unless the test says otherwise. */
class LongestStockTest {

  private static final String WOOL_RACK =
      """
      slatwright: 1
      title: Rack for drying wool
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        bays: 2
        interior-width: 580
        rail-length: 320
        upright: 1500
      slats: { per-shelf: 3 }
      """;

  @Test
  void slatsTooLongToRunThroughMayMeetOnTheInnerFrames() throws Exception {
    // 2 x 580 + 3 x 44 = 1292; per bay 44 + 580 + 22 = 646; (1180 - 132) / 2 = 524
    String setting = "timber.slats.lengths=[{length: 1200}, {length: 900}]";
    Problem problem = problem(WOOL_RACK, setting);

    assertEquals(
        "the slats are 1292 mm long, but the longest that timber.slats gives is 1180 mm, 10 mm"
            + " squared off each end; with slats.run: per-bay they would be 646 mm",
        problem.message());
    assertEquals(
        List.of("slats.run=per-bay", "rack.interior-width=524"),
        provenChanges(problem, WOOL_RACK, setting));
  }

  @Test
  void aLengthThatIsJustEnoughWillDo() throws Exception {
    solve(WOOL_RACK, "timber.slats.lengths=[{length: 1312}]");
    problem(WOOL_RACK, "timber.slats.lengths=[{length: 1311}]");
  }

  @Test
  void slatsPerBayTooLongForTheStockNameTheWidthThatFits() throws Exception {
    // 646 - 580 = 66; 620 - 20 - 66 = 534
    String[] settings = {"timber.slats.lengths=[{length: 620}]", "slats.run=per-bay"};
    Problem problem = problem(WOOL_RACK, settings);

    assertEquals(List.of("rack.interior-width=534"), provenChanges(problem, WOOL_RACK, settings));
  }

  @Test
  void aBoardServesOnlyWithItsLongestClearStretch() throws Exception {
    // 668 in one bay; clear of 0..25 and 700..720: 675, then 1390 - 720 = 670 at the other end
    String board = "timber.slats.boards=[{length: 1400, width: 95, thickness: 18, avoid: [%s]}]";
    solve(WOOL_RACK, "rack.bays=1", board.formatted("0..25, 700..720"));

    Problem problem = problem(WOOL_RACK, "rack.bays=1", board.formatted("0..40, 700..725"));

    assertEquals(
        "the slats are 668 mm long, but the longest that timber.slats gives is 665 mm, 10 mm"
            + " squared off each end",
        problem.message());
  }

  @Test
  void boardsTooNarrowForTheSlatsDoNotCount() {
    assertEquals(
        "the slats are 668 mm long, but the longest that timber.slats gives is 480 mm, 10 mm squared"
            + " off each end",
        problem(
                WOOL_RACK,
                "rack.bays=1",
                "timber.slats.boards=[{length: 900, width: 94, thickness: 18},"
                    + " {length: 500, width: 95, thickness: 18}]")
            .message());
  }

  @Test
  void uprightsLongerThanTheStockNameTheLengthThatFits() throws Exception {
    String setting = "timber.frame.lengths=[{length: 1400}]";
    Problem problem = problem(WOOL_RACK, setting);

    assertEquals(
        "the uprights are 1500 mm long, but the longest that timber.frame.lengths gives is 1380 mm,"
            + " 10 mm squared off each end",
        problem.message());
    assertEquals(List.of("rack.upright=1380"), provenChanges(problem, WOOL_RACK, setting));
  }

  @Test
  void uprightsThatAreTooLongShowThoughTheHeightsDoNotAddUp() throws Exception {
    // 221 + 3 x (41 + 18) + 355 + 241.4 + 86 = 1080.4, which 807 - 20 = 787 does not give either
    String[] settings = {
      "timber.frame={section: 36 x 41, lengths: [{length: 807}]}",
      "rack={interior-width: 580, upright: 1092.6, foot: 221, top: 86, openings: [355, 241.4]}",
      "slats.per-shelf=6"
    };
    List<Problem> problems = problems(WOOL_RACK, settings);

    assertEquals(
        List.of(
            "the heights add up to 1080.4 mm (foot 221 mm + 3 shelves of rail and slat, 59 mm each"
                + " + openings 596.4 mm + top 86 mm), 12.2 mm too short for uprights of 1092.6 mm",
            "the uprights are 1092.6 mm long, but the longest that timber.frame.lengths gives is"
                + " 787 mm, 10 mm squared off each end"),
        problems.stream().map(Problem::message).toList());
    assertEquals(
        List.of(), problems.stream().flatMap(problem -> problem.changes().stream()).toList());
  }

  @Test
  void heightsThatTheStockGivesPutUprightsThatAreTooLongRight() throws Exception {
    // 100 + 3 x 62 + 2 x 500 = 1286, of 1400 - 20 = 1380
    String[] settings = {
      "timber.frame.lengths=[{length: 1400}]",
      "rack.foot=100",
      "rack.openings=[500, 500]",
      "rack.top=flush"
    };
    List<Problem> problems = problems(WOOL_RACK, settings);

    assertEquals(2, problems.size());
    assertEquals(List.of("rack.upright=1286"), provenChanges(problems.get(0), WOOL_RACK, settings));
    assertEquals(List.of(), problems.get(1).changes());
  }

  @Test
  void railsThatAreTooLongShowThoughTheSlatsDoNotLieOnThem() throws Exception {
    // 17 x 95 = 1615, more than 1610; 16 x 95 + 15 x 4 = 1580, which the stock gives
    String[] settings = {
      "rack.rail-length=1610", "slats.per-shelf=17", "timber.frame.lengths=[{length: 1600}]"
    };
    List<Problem> problems = problems(WOOL_RACK, settings);

    assertEquals(
        List.of(
            "17 slats of 95 mm take 1615 mm, 5 mm more than the rails of 1610 mm",
            "the rails are 1610 mm long, but the longest that timber.frame.lengths gives is 1580 mm,"
                + " 10 mm squared off each end"),
        problems.stream().map(Problem::message).toList());
    assertEquals(
        List.of(), problems.stream().flatMap(problem -> problem.changes().stream()).toList());
  }

  @Test
  void slatsAreNotRunThroughWhereTheStockIsTooShort() throws Exception {
    // per bay 18 + 580 + 9 = 607, through 2 x 580 + 3 x 18 = 1214
    String[] settings = {
      "timber.frame.section=18 x 44",
      "timber.dowel.diameter=8",
      "slats.run=per-bay",
      "timber.slats.lengths=[{length: 1233}]"
    };

    assertEquals(List.of(), problem(WOOL_RACK, settings).changes());
    settings[3] = "timber.slats.lengths=[{length: 1234}]";
    assertEquals(
        List.of("slats.run=through"),
        provenChanges(problem(WOOL_RACK, settings), WOOL_RACK, settings));
  }

  @Test
  void railsOfFrameStockAreCheckedAgainstItAndOthersAreNot() throws Exception {
    // deeper than the rack is high: 16 slats on rails of 1600
    String[] deep = {
      "rack.rail-length=1620", "slats.per-shelf=16", "timber.frame.lengths=[{length: 1600}]"
    };

    assertEquals(
        "the rails are 1620 mm long, but the longest that timber.frame.lengths gives is 1580 mm, 10"
            + " mm squared off each end",
        problem(WOOL_RACK, deep).message());
    solve(WOOL_RACK, deep[0], deep[1], deep[2], "timber.rails.section=44 x 70");
  }

  @Test
  void endTrimCounts() throws Exception {
    solve(WOOL_RACK, "timber.frame.lengths=[{length: 1510}]", "shop.end-trim=5");
    problem(WOOL_RACK, "timber.frame.lengths=[{length: 1509}]", "shop.end-trim=5");
  }

  @Test
  void dowelsLongerThanTheRodAreAnError() {
    assertEquals(
        "dowels of 79 mm do not come out of rod of 70 mm",
        problem(WOOL_RACK, "timber.dowel={diameter: 10, rod-length: 70}").message());
  }
}
