package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
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
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.Problem;

/** Worked by hand on a rack whose shelves each take 44 + 18 = 62 mm. */
class HeightChainTest {

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

  /** Rails measured a little thin: a shelf takes 61.7 mm. */
  private static final String MEASURED = SEED_TRAYS.replace("44 x 44", "44 x 43.7");

  @Test
  void theFootTakesWhatTheOtherHeightsLeave() throws Exception {
    // 1500 - 3 x 62 - 2 x 500 = 314
    Rack rack = solve(SEED_TRAYS, "rack.upright=1500", "rack.openings=[500, 500]");

    assertEquals(
        "foot 314*, rail 44, slat 18, clear 500, rail 44, slat 18, clear 500, rail 44, slat 18",
        links(rack, "height"));
    assertEquals(
        "the foot clearance is 314 mm: what the other heights leave", note(rack, "rack.foot"));
  }

  @Test
  void withTheFootGivenTheUprightsRunOnAboveTheTopSlats() throws Exception {
    // 1500 - 300 - 3 x 62 - 2 x 500 = 14
    Rack rack = solve(SEED_TRAYS, "rack.upright=1500", "rack.openings=[500, 500]", "rack.foot=300");

    assertEquals(Length.mm(14), rack.topAbove());
    assertEquals(
        "the uprights run on 14 mm above the top slats: what the other heights leave",
        note(rack, "rack.top"));
  }

  @Test
  void evenOpeningsShareAndTheFootTakesWhatIsLess() throws Exception {
    // 1500 - 100 - 5 x 62 = 1090 = 4 x 272 + 2
    Rack rack = solve(SEED_TRAYS, "rack.upright=1500", "rack.openings=[{clear: even, count: 4}]");

    assertEquals(mm("272", "272", "272", "272"), rack.openings());
    assertEquals(Length.mm(102), rack.foot());
  }

  @Test
  void withTheFootGivenTheTopTakesWhatEvenOpeningsCannotShare() throws Exception {
    Rack rack =
        solve(
            SEED_TRAYS,
            "rack.upright=1500",
            "rack.foot=100",
            "rack.openings=[{clear: even, count: 4}]");

    assertEquals(mm("272", "272", "272", "272"), rack.openings());
    assertEquals(Length.mm(2), rack.topAbove());
  }

  @Test
  void withFootAndTopGivenTheLowestEvenOpeningsAreAnIncrementWider() throws Exception {
    Rack rack =
        solve(
            SEED_TRAYS,
            "rack.upright=1500",
            "rack.foot=100",
            "rack.top=flush",
            "rack.openings=[{clear: even, count: 4}]");

    assertEquals(mm("273", "273", "272", "272"), rack.openings());
    assertEquals(
        "272 to 273 mm clear in each of 4 even openings: what cannot be shared equally went to the"
            + " lowest",
        note(rack, "rack.openings"));
  }

  @Test
  void whatIsLessThanAnIncrementGoesToTheLowestOpening() throws Exception {
    // 1500 - 100 - 5 x 61.7 = 1091.5 = 4 x 272 + 3 x 1 + 0.5
    Rack rack =
        solve(
            MEASURED,
            "rack.upright=1500",
            "rack.foot=100",
            "rack.top=flush",
            "rack.openings=[{clear: even, count: 4}]");

    assertEquals(mm("273.5", "273", "273", "272"), rack.openings());
  }

  @Test
  void fixedOpeningsStandBesideEvenOnes() throws Exception {
    // 1500 - 100 - 4 x 62 - 300 = 852 = 2 x 426
    Rack rack = solve(SEED_TRAYS, "rack.upright=1500", "rack.openings=[even, 300, even]");

    assertEquals(mm("426", "300", "426"), rack.openings());
    assertEquals(Length.mm(100), rack.foot());
  }

  @Test
  void withoutOpeningsThereIsOneEvenOne() throws Exception {
    // 1500 - 100 - 2 x 62 = 1276
    assertEquals(mm("1276"), solve(SEED_TRAYS, "rack.upright=1500").openings());
  }

  @Test
  void anEmptyListOfOpeningsMakesOneShelf() throws Exception {
    // 400 - 62 = 338
    Rack rack = solve(SEED_TRAYS, "rack.upright=400", "rack.openings=[]");

    assertEquals("foot 338*, rail 44, slat 18", links(rack, "height"));
  }

  @Test
  void withoutAnUprightTheSumDecidesAndRoundingGoesToTheFoot() throws Exception {
    // 100 + 3 x 61.7 + 800 = 1085.1
    Rack rack = solve(MEASURED, "rack.openings=[300, 500]");

    assertEquals(Length.mm(1086), rack.upright().length());
    assertEquals(mm("100.9"), List.of(rack.foot()));
    assertEquals(
        "the uprights are 1086 mm: all heights added up and rounded up to the next 1 mm",
        note(rack, "rack.upright"));
  }

  @Test
  void withoutAnUprightAndWithAFootRoundingGoesToTheTop() throws Exception {
    Rack rack = solve(MEASURED, "rack.openings=[300, 500]", "rack.foot=100");

    assertEquals(Length.mm(1086), rack.upright().length());
    assertEquals(mm("0.9"), List.of(rack.topAbove()));
  }

  @Test
  void withFootAndTopGivenTheUprightIsTheExactSum() throws Exception {
    // 100 + 3 x 61.7 + 800 + 30 = 1115.1
    Rack rack = solve(MEASURED, "rack.openings=[300, 500]", "rack.foot=100", "rack.top=30");

    assertEquals(mm("1115.1"), List.of(rack.upright().length()));
  }

  @Test
  void railsOfTheirOwnStockCountWithTheirHeight() throws Exception {
    // 1500 - 3 x (70 + 18) - 1000 = 236
    Rack rack =
        solve(
            SEED_TRAYS,
            "timber.rails.section=44 x 70",
            "rack.upright=1500",
            "rack.openings=[500, 500]");

    assertEquals(Length.mm(236), rack.foot());
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
    assertEquals(
        List.of(
            "uprights of 1086 mm",
            "a foot clearance of 88 mm",
            "opening 1 of 288 mm instead of 300 mm",
            "opening 2 of 488 mm instead of 500 mm",
            "all 2 even openings of 394 mm clear",
            "one shelf less: 1 even opening of 850 mm clear",
            "one shelf more: 3 even openings of 242 mm clear"),
        problem.changes().stream().map(Problem.Change::words).toList());
  }

  @Test
  void aChainThatIsTooShortMayRunOnAtTheTop() throws Exception {
    String[] settings = {
      "rack.upright=1100", "rack.openings=[300, 500]", "rack.foot=100", "rack.top=flush"
    };
    Problem problem = problem(SEED_TRAYS, settings);

    assertEquals(
        List.of("rack.upright=1086", "rack.foot=114", "rack.top=14"),
        provenChanges(problem, SEED_TRAYS, settings).subList(0, 3));
  }

  @Test
  void noOpeningIsProposedThatIsTooLowForAHand() throws Exception {
    // 3 x 62 + 100 + 500 = 786; 50 is our own least
    List<String> settings = List.of("rack.openings=[100, 500]", "rack.foot=0", "rack.top=flush");

    assertTrue(changes(settings, "rack.upright=736").contains("rack.openings[0]=50"));
    assertTrue(
        changes(settings, "rack.upright=735").stream()
            .noneMatch(change -> change.startsWith("rack.openings[0]=49")));
  }

  private static List<String> changes(List<String> settings, String upright) throws Exception {
    String[] all = Stream.concat(settings.stream(), Stream.of(upright)).toArray(String[]::new);
    return provenChanges(problem(SEED_TRAYS, all), SEED_TRAYS, all);
  }

  @Test
  void openingsThatAreAlikeAreChangedTogether() throws Exception {
    // 100 + 4 x 62 + 3 x 160 = 828
    String[] settings = {
      "rack.upright=816",
      "rack.openings=[{clear: 160, count: 3}]",
      "rack.foot=100",
      "rack.top=flush"
    };
    Problem problem = problem(SEED_TRAYS, settings);

    provenChanges(problem, SEED_TRAYS, settings);
    assertEquals(
        new Problem.Change(
            "rack.openings[0].clear=156", "openings 1 to 3 of 156 mm instead of 160 mm"),
        problem.changes().get(2));
  }

  @Test
  void onlyNumbersOnTheIncrementAreProposed() throws Exception {
    // 100 + 3 x 61.7 + 800 = 1085.1: no upright, foot or opening of whole millimetres closes that
    String[] settings = {
      "rack.upright=1074", "rack.openings=[300, 500]", "rack.foot=100", "rack.top=flush"
    };
    Problem problem = problem(MEASURED, settings);

    assertEquals(
        List.of(
            "rack.openings[0]=even",
            "rack.openings[1]=even",
            "rack.openings=[{clear: even, count: 2}]",
            "rack.openings=[{clear: even, count: 1}]",
            "rack.openings=[{clear: even, count: 3}]"),
        provenChanges(problem, MEASURED, settings));
  }

  @Test
  void asManyShelvesAreTakenAwayAsItNeeds() throws Exception {
    // 700 - 100 = 600: three openings need 4 x 62 + 3 x 50 = 398; nine need 620 for the shelves
    String[] settings = {
      "rack.upright=700", "rack.openings=[{clear: 200, count: 9}]", "rack.foot=100"
    };
    Problem problem = problem(SEED_TRAYS, settings);

    assertEquals(
        new Problem.Change(
            "rack.openings=[{clear: even, count: 4}]",
            "5 shelves fewer: 4 even openings of 72 mm clear"),
        problem.changes().get(1));
    provenChanges(problem, SEED_TRAYS, settings);
  }

  @Test
  void uprightsTooShortForAnyFootSaySo() throws Exception {
    String[] settings = {"rack.upright=900", "rack.openings=[300, 500]"};
    Problem problem = problem(SEED_TRAYS, settings);

    assertEquals(
        "the heights add up to 986 mm (3 shelves of rail and slat, 62 mm each + openings 800 mm),"
            + " 86 mm too long for uprights of 900 mm",
        problem.message());
    assertEquals("rack.upright=1086", provenChanges(problem, SEED_TRAYS, settings).get(0));
  }

  @Test
  void evenOpeningsWithNothingLeftSayWhatTheOthersTake() throws Exception {
    // 100 + 4 x 62 + 700 = 1048
    String[] settings = {"rack.upright=1000", "rack.openings=[even, even, 700]"};
    Problem problem = problem(SEED_TRAYS, settings);

    assertEquals(
        "uprights of 1000 mm leave no clear height for 2 even openings: the other heights add up to"
            + " 1048 mm (foot 100 mm + 4 shelves of rail and slat, 62 mm each + openings 700 mm),"
            + " so they are 48 mm too short already",
        problem.message());
    assertEquals(
        List.of(
            "rack.openings[2]=even",
            "rack.openings=[{clear: even, count: 2}]",
            "rack.openings=[{clear: even, count: 4}]"),
        provenChanges(problem, SEED_TRAYS, settings));
  }

  @Test
  void anEvenOpeningNeedsAnUpright() {
    String yaml = SEED_TRAYS.replace("rack:\n", "rack:\n  openings: [ 300, even ]\n");
    Problem problem = problem(yaml);

    assertEquals(new Place("rack.yaml", 8, 20), problem.place());
    assertEquals(
        "an even opening takes its share of what the uprights leave, but rack.upright is left out:"
            + " give rack.upright, or a clear height here",
        problem.message());
  }

  @Test
  void aRackOfUnknownHeightSaysWhatToGive() {
    Problem problem = problem(SEED_TRAYS);

    assertEquals(
        "nothing says how high the rack is: give rack.upright (the full height of an upright),"
            + " rack.openings (the clear height above each shelf but the top one), or holds (what"
            + " it must take)",
        problem.message());
  }

  @Test
  void theComplaintStandsAtTheUpright() {
    String yaml = SEED_TRAYS.replace("rack:\n", "rack:\n  upright: 900\n  openings: [ 900 ]\n");

    assertEquals(new Place("rack.yaml", 8, 12), problem(yaml).place());
  }
}
