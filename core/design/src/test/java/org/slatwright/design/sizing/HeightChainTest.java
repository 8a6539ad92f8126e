package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.links;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.design.rackfile.Problem;

class HeightChainTest {

  /** One shelf takes 44 + 18 = 62 mm. */
  private static final String SEED_TRAYS =
      """
      slatwright: 1
      title: Seed-tray rack
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 580
        rail-length: 320
      slats: { per-shelf: 3 }
      """;

  @Test
  void theFootTakesWhatTheOtherHeightsLeave() throws Exception {
    // 1500 - 3 x 62 - 2 x 500 = 314
    Rack rack = solve(SEED_TRAYS, "rack.upright=1500", "rack.openings=[500, 500]");

    assertEquals(
        "foot 314*, rail 44, slat 18, clear 500, rail 44, slat 18, clear 500, rail 44, slat 18",
        links(rack, "height"));
  }

  @Test
  void aChainThatDoesNotCloseSaysByHowMuchAndNamesEachSingleChange() throws Exception {
    // 100 + 3 x 62 + 300 + 500 = 1086
    String[] settings = {
      "rack.upright=1074", "rack.openings=[300, 500]", "rack.foot=100", "rack.top=flush"
    };
    Problem problem = problem(SEED_TRAYS, settings);

    assertEquals(
        "the heights add up to 1086 mm (foot 100 mm + 3 shelves of rail and slat, 62 mm each +"
            + " openings 800 mm), 12 mm too long for uprights of 1074 mm",
        problem.message());
    assertEquals(
        List.of(
            "rack.upright=1086",
            "rack.foot=88",
            "rack.openings[0]=288",
            "rack.openings[1]=488",
            "rack.openings=[{clear: even, count: 2}]",
            "rack.openings=[{clear: even, count: 1}]",
            "rack.openings=[{clear: even, count: 3}]"),
        provenChanges(problem, SEED_TRAYS, settings));
  }
}
