package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.sizing.Solving.links;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.rackfile.Problem;

/** Worked by hand with slats 95 mm wide. */
class SlatRowChainTest {

  private static final String WARE_RACK =
      """
      slatwright: 1
      title: Ware rack for a pottery
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 580
        upright: 1500
      """;

  @Test
  void railAndCountDecideTheGapAndTheSlackLiesInTheMargins() throws Exception {
    // 320 - 3 x 95 = 35 = 2 x 17 + 1
    Rack rack = solve(WARE_RACK, "rack.rail-length=320", "slats.per-shelf=3");

    assertEquals("slat 95, gap 17*, slat 95, gap 17*, slat 95, margin 1*", links(rack, "slat row"));
    assertEquals("upright 44, rail 320, upright 44", links(rack, "depth"));
    assertEquals(
        "the gap between slats is 17 mm: what the rails leave, shared equally",
        note(rack, "slats.gap"));
  }

  @Test
  void withEverythingGivenTheSlackLiesInTheMargins() throws Exception {
    // 320 - 3 x 95 - 2 x 8 = 19 = 9 + 10
    Rack rack = solve(WARE_RACK, "rack.rail-length=320", "slats.per-shelf=3", "slats.gap=8");

    assertEquals(
        "margin 9*, slat 95, gap 8, slat 95, gap 8, slat 95, margin 10*", links(rack, "slat row"));
  }

  @Test
  void withOnlyAGapAsManySlatsLieOnTheRailAsFit() throws Exception {
    // 4 x 95 + 3 x 8 = 404, 5 x 95 + 4 x 8 = 507
    Rack rack = solve(WARE_RACK, "rack.rail-length=500", "slats.gap=8");

    assertEquals(4, rack.slats().count());
    assertEquals(Length.mm(48), rack.slats().frontMargin());
    assertEquals(
        "4 slats of 95 mm to a shelf: as many as the rails take", note(rack, "slats.per-shelf"));
  }

  @Test
  void withNeitherAsManySlatsLieOnTheRailAsKeepTheUsualGap() throws Exception {
    // (500 - 5 x 95) / 4 = 6.25, so 6 and 1 mm of slack
    Rack rack = solve(WARE_RACK, "rack.rail-length=500");

    assertEquals(5, rack.slats().count());
    assertEquals(Length.mm(6), rack.slats().gap());
    assertEquals(Length.mm(1), rack.slats().backMargin());
  }

  @Test
  void aRailThatNoNumberOfSlatsSuitsNamesRailsThatWouldDo() throws Exception {
    // (450 - 4 x 95) / 3 = 23.3, and 5 x 95 = 475 is too wide; 4 x 95 + 3 x 20, 5 x 95 + 4 x 3
    Problem problem = problem(WARE_RACK, "rack.rail-length=450");

    assertEquals(
        "no number of slats leaves gaps of 3 mm to 20 mm on rails of 450 mm: 4 slats of 95 mm leave"
            + " gaps of 23 mm, and 5 are too many",
        problem.message());
    assertEquals(
        List.of("rack.rail-length=440", "rack.rail-length=487", "slats.per-shelf=4"),
        provenChanges(problem, WARE_RACK, "rack.rail-length=450"));
  }

  @Test
  void whereOneMoreSlatFitsTooCloselyItsGapIsNamedAndMayBeAllowed() throws Exception {
    // (483 - 4 x 95) / 3 = 34.3, (483 - 5 x 95) / 4 = 2
    Problem problem = problem(WARE_RACK, "rack.rail-length=483");

    assertEquals(
        "no number of slats leaves gaps of 3 mm to 20 mm on rails of 483 mm: 4 slats of 95 mm leave"
            + " gaps of 34 mm, and 5 leave gaps of 2 mm",
        problem.message());
    assertEquals(
        List.of(
            "rack.rail-length=440",
            "rack.rail-length=487",
            "slats.per-shelf=4",
            "slats.gap-range=2..20"),
        provenChanges(problem, WARE_RACK, "rack.rail-length=483"));
  }

  @Test
  void withoutARailTheSlatsAndTheMiddleGapDecideIt() throws Exception {
    // middle of 3..20 = 11.5, so 11: 4 x 95 + 3 x 11 = 413
    Rack rack = solve(WARE_RACK, "slats.per-shelf=4");

    assertEquals(
        "slat 95, gap 11*, slat 95, gap 11*, slat 95, gap 11*, slat 95", links(rack, "slat row"));
    assertEquals(Length.mm(413), rack.rail().length());
    assertEquals(
        "the gap between slats is 11 mm: the middle of the range", note(rack, "slats.gap"));
  }

  @Test
  void theMiddleGapIsOnTheIncrementWhereTheRangeHoldsOne() throws Exception {
    String[] narrow = {"slats.per-shelf=4", "increment=5", "slats.gap-range=6..10"};
    assertEquals(Length.mm(10), solve(WARE_RACK, narrow).slats().gap());

    narrow[2] = "slats.gap-range=6..8";
    assertEquals(Length.mm(7), solve(WARE_RACK, narrow).slats().gap());
  }

  @Test
  void aRailThatIsSolvedIsRoundedUp() throws Exception {
    // 4 x 92.3 + 3 x 10 = 399.2, so 400 and 0.8 of slack
    Rack rack =
        solve(WARE_RACK, "timber.slats.section=18 x 92.3", "slats.per-shelf=4", "slats.gap=10");

    assertEquals(Length.mm(400), rack.rail().length());
    assertEquals(Length.ZERO, rack.slats().frontMargin());
    assertEquals(Solving.length("0.8"), rack.slats().backMargin());
  }

  @Test
  void aSingleSlatHasMarginsAndNoGap() throws Exception {
    Rack rack = solve(WARE_RACK, "rack.rail-length=120", "slats.per-shelf=1", "joint.embedment=30");

    assertEquals("margin 12*, slat 95, margin 13*", links(rack, "slat row"));
    assertEquals(Length.ZERO, rack.slats().gap());
  }

  @Test
  void aGapOutsideTheUsualRangeIsAWarning() throws Exception {
    // (420 - 3 x 95) / 2 = 67.5
    Rack rack = solve(WARE_RACK, "rack.rail-length=420", "slats.per-shelf=3");

    assertEquals(Length.mm(67), rack.slats().gap());
    Finding warning =
        rack.notes().stream().filter(n -> n.subject().equals("slats.gap")).findFirst().get();
    assertEquals(Finding.Severity.WARNING, warning.severity());
    assertEquals(
        "the gap between slats is 67 mm, outside the usual 3 mm to 20 mm", warning.message());
  }

  @Test
  void aGapOutsideTheRangeThatWasGivenIsAnError() throws Exception {
    String[] settings = {"rack.rail-length=420", "slats.per-shelf=3", "slats.gap-range=5..20"};
    Problem problem = problem(WARE_RACK, settings);

    assertEquals(
        "3 slats of 95 mm on rails of 420 mm leave gaps of 67 mm, outside slats.gap-range, 5 mm to"
            + " 20 mm",
        problem.message());
    // 3 x 95 + 2 x 20 = 325; (420 - 4 x 95) / 3 = 13.3
    assertEquals(
        List.of("rack.rail-length=325", "slats.per-shelf=4", "slats.gap-range=5..67"),
        provenChanges(problem, WARE_RACK, settings));
  }

  @Test
  void aGivenGapOutsideAGivenRangeIsAnError() throws Exception {
    String[] settings = {"slats.per-shelf=3", "slats.gap=25", "slats.gap-range=5..20"};
    Problem problem = problem(WARE_RACK, settings);

    assertEquals("the gap of 25 mm is outside slats.gap-range, 5 mm to 20 mm", problem.message());
    assertEquals(
        List.of("slats.gap=20", "slats.gap-range=5..25"),
        provenChanges(problem, WARE_RACK, settings));
  }

  @Test
  void noGapIsProposedThatMakesTheRailsTooShortForTheDowels() throws Exception {
    // two holes of 93.5 + 2 take 191: all of 2 x 95 + 1, but less than 2 x 95 + 2
    String[] settings = {
      "slats.per-shelf=2", "slats.gap=1", "slats.gap-range=2..20", "joint.embedment=93.5"
    };
    Problem problem = problem(WARE_RACK, settings);

    assertEquals("the gap of 1 mm is outside slats.gap-range, 2 mm to 20 mm", problem.message());
    assertEquals(List.of("slats.gap=2"), provenChanges(problem, WARE_RACK, settings));
  }

  @Test
  void slatsThatTakeMoreThanTheRailSayByHowMuch() throws Exception {
    // 4 x 95 = 380; 4 x 95 + 3 x 3 = 389; (320 - 3 x 95) / 2 = 17.5
    String[] settings = {"rack.rail-length=320", "slats.per-shelf=4"};
    Problem problem = problem(WARE_RACK, settings);

    assertEquals(
        "4 slats of 95 mm take 380 mm, 60 mm more than the rails of 320 mm", problem.message());
    assertEquals(
        List.of("rack.rail-length=389", "slats.per-shelf=3"),
        provenChanges(problem, WARE_RACK, settings));
  }

  @Test
  void slatsAndGapsThatTakeMoreThanTheRailNameEachSingleChange() throws Exception {
    // 3 x 95 + 2 x 20 = 325; (320 - 285) / 2 = 17.5
    String[] settings = {"rack.rail-length=320", "slats.per-shelf=3", "slats.gap=20"};
    Problem problem = problem(WARE_RACK, settings);

    assertEquals(
        "3 slats of 95 mm with gaps of 20 mm take 325 mm, 5 mm more than the rails of 320 mm",
        problem.message());
    assertEquals(
        List.of("rack.rail-length=325", "slats.per-shelf=2", "slats.gap=17"),
        provenChanges(problem, WARE_RACK, settings));
  }

  @Test
  void aSlatWiderThanTheRailIsAnError() {
    Problem problem = problem(WARE_RACK, "rack.rail-length=80");

    assertEquals("slats of 95 mm are wider than the rails of 80 mm", problem.message());
  }

  @Test
  void aRackOfUnknownDepthSaysWhatToGive() {
    assertTrue(
        problem(WARE_RACK)
            .message()
            .startsWith("nothing says how deep the rack is: give rack.rail-length"));
  }
}
