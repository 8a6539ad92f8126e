package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.links;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.problems;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.rackfile.Problem;

class SizingTest {

  private static final String SEED_TRAYS =
      """
      slatwright: 1
      title: Seed-tray rack
      timber:
        frame: { section: 44 x 44 }
        slats: { section: 18 x 95 }
      rack:
        interior-width: 580
        rail-length: 320
        upright: 1500
      """;

  /**
   * Uprights and rails of 2x2, dressed 1 1/2 x 1 1/2 in, slats of 1x4, dressed 3/4 x 3 1/2 in:
   * American Softwood Lumber Standard PS 20, minimum dressed sizes, dry.
   */
  @Test
  void aRackOfDressedAmericanLumberIsSolvedInSixteenths() throws Exception {
    Rack rack =
        solve(
            """
            slatwright: 1
            title: Potting-bench rack
            units: in
            timber:
              frame: { section: 1 1/2 x 1 1/2, species: ponderosa pine }
              slats: { section: 3/4 x 3 1/2 }
            rack:
              interior-width: 24
              upright: 54
              openings: [ { clear: even, count: 3 } ]
            slats: { per-shelf: 4 }
            """);

    // shelves 4 x 2 1/4 = 9; 54 - 4 - 9 = 41 = 3 x 13 5/8 + 1/8
    assertEquals(
        "foot 4 1/8*, rail 1 1/2, slat 3/4, clear 13 5/8*, rail 1 1/2, slat 3/4, clear 13 5/8*, rail"
            + " 1 1/2, slat 3/4, clear 13 5/8*, rail 1 1/2, slat 3/4",
        links(rack, "height"));
    // the middle of 1/8..3/4 is 7/16: 4 x 3 1/2 + 3 x 7/16 = 15 5/16
    assertEquals(
        "slat 3 1/2, gap 7/16*, slat 3 1/2, gap 7/16*, slat 3 1/2, gap 7/16*, slat 3 1/2",
        links(rack, "slat row"));
    assertEquals("upright 1 1/2, rail 15 5/16*, upright 1 1/2", links(rack, "depth"));
    assertEquals("frame 1 1/2, interior 24, frame 1 1/2", links(rack, "width"));
    // half of 1 1/2 is 3/4, so 1/2; 3 1/2 x 1/2 = 1 3/4
    assertEquals("upright 1 1/2, embedment 1 3/4*", links(rack, "dowel"));
    assertEquals(Length.inches(1, 2), rack.joint().diameter());
    assertEquals(Length.inches(29, 16), rack.joint().holeDepth());
    // 2 1/2 x 3/4 = 1 7/8, so 2; but slat and rail are 2 1/4, less 1/4
    assertEquals(Length.inches(2, 1), rack.fixing().length());
    assertEquals(List.of(Length.inches(27, 1)), rack.slats().lengths());
  }

  @Test
  void chainsComeInTheOrderHeightDepthWidthRowDowel() throws Exception {
    assertEquals(
        List.of("height", "depth", "width", "slat row", "dowel"),
        solve(SEED_TRAYS).chains().stream().map(Chain::name).toList());
  }

  @Test
  void independentProblemsAreAllToldInTheOrderOfTheFile() {
    List<Problem> problems =
        problems(
            """
            slatwright: 1
            title: All wrong
            timber:
              frame: { section: 44 x 44 }
              rails: { section: 50 x 44 }
              slats: { section: 18 x 95 }
              dowel: { diameter: 60 }
            rack:
              rail-length: 80
              upright: 100
            joint: { fixing: { length: 90 } }
            """);

    assertEquals(
        List.of(
            "rails 50 mm wide stand out beyond uprights 44 mm wide",
            "a dowel of 60 mm is not thinner than the stock it joins, 44 mm",
            "nothing says how wide the rack is: give rack.interior-width (the clear width between two"
                + " frames) or holds (what it must take)",
            "slats of 95 mm are wider than the rails of 80 mm",
            "uprights of 100 mm leave no clear height for 1 even opening: the other heights add up"
                + " to 224 mm (foot 100 mm + 2 shelves of rail and slat, 62 mm each), so they are"
                + " 124 mm too short already",
            "a brad of 90 mm comes out below: slat and rail are 62 mm together"),
        problems.stream().map(Problem::message).toList());
  }

  @Test
  void railsWiderThanTheUprightsMayBeRippedToThem() throws Exception {
    String setting = "timber.rails.section=50 x 70";
    Problem problem = problem(SEED_TRAYS, setting);

    assertEquals(
        List.of("timber.rails.section=44x70"), provenChanges(problem, SEED_TRAYS, setting));
  }

  @Test
  void aChangeInMetricSizesOfAnInchFileIsReadBackExactly() throws Exception {
    String[] settings = {"units=in", "timber.rails.section=50 mm x 70 mm"};
    String yaml =
        SEED_TRAYS
            .replace("44 x 44", "44.1 mm x 44 mm")
            .replace("18 x 95", "18 mm x 95 mm")
            .replace("580", "580 mm")
            .replace("320", "320 mm")
            .replace("1500", "1500 mm");
    Problem problem = problem(yaml, settings);

    assertEquals(
        List.of("timber.rails.section=44.1mmx70mm"), provenChanges(problem, yaml, settings));
  }

  @Test
  void slatsOfNothingAreAnError() {
    assertEquals(
        "nothing says what the slats are cut from: give timber.slats.section (thickness x width), or"
            + " timber.slats.boards, measured one by one",
        problem(SEED_TRAYS.replace("section: 18 x 95", "boards: []")).message());
  }

  @Test
  void aSpeciesLeftOutIsNamed() throws Exception {
    Rack rack = solve(SEED_TRAYS);

    assertEquals("norway spruce", rack.species());
    assertEquals(
        "reckoned as norway spruce of strength class C16, as stock without a grade stamp is",
        note(rack, "timber.frame.species"));
  }
}
