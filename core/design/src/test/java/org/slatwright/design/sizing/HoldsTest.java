package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slatwright.design.sizing.Solving.links;
import static org.slatwright.design.sizing.Solving.mm;
import static org.slatwright.design.sizing.Solving.note;
import static org.slatwright.design.sizing.Solving.problem;
import static org.slatwright.design.sizing.Solving.provenChanges;
import static org.slatwright.design.sizing.Solving.solve;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.api.plan.Fit;
import org.slatwright.design.rackfile.Problem;

/** Worked by hand on a rack whose shelves each take 44 + 18 = 62 mm, of slats 95 mm wide. */
class HoldsTest {

  private static final String SEED_TRAYS =
      """
      slatwright: 1
      title: Seed-tray rack
      holds:
        - { name: seed tray, width: 285, depth: 545, height: 60, across: 2, high: 6, clearance: 12 }
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      """;

  private static final String POT =
      "holds[1]={name: pot, width: 200, depth: 200, height: 250, clearance: 5}";

  @Test
  void aRackOfWhichNoSizeIsGivenIsSolvedFromWhatItHolds() throws Exception {
    Rack rack = solve(SEED_TRAYS);

    // 2 x 285 + 3 x 12 = 606
    assertEquals("frame 44, interior 606*, frame 44", links(rack, "width"));
    assertEquals(
        "606 mm between two frames: 2 × seed tray of 285 mm and 12 mm on each side",
        note(rack, "rack.interior-width"));
    // 545 + 2 x 12 = 569: 5 slats would leave gaps of 23, so 6 of them, 6 x 95 + 5 x 3 = 585
    assertEquals("upright 44, rail 585*, upright 44", links(rack, "depth"));
    assertEquals(6, rack.slats().count());
    assertEquals(
        "the rails are 585 mm: the shortest that slats and dowels allow for seed tray of 545 mm and"
            + " 12 mm before and behind each",
        note(rack, "rack.rail-length"));
    // 6 x 60 + 12 = 372; 100 + 62 + 372 + 62 = 596
    assertEquals(
        "foot 100*, rail 44, slat 18, clear 372*, rail 44, slat 18", links(rack, "height"));
    assertEquals(
        "372 mm clear: 6 × seed tray of 60 mm and 12 mm above", note(rack, "rack.openings"));
    assertEquals(Length.mm(596), rack.upright().length());
    assertEquals(List.of(), found(rack));
  }

  @Test
  void eachThingHasAnOpeningOfItsOwnInTheirOrder() throws Exception {
    assertEquals(mm("372", "255"), solve(SEED_TRAYS, POT).openings());
  }

  @Test
  void anOpeningForAThingIsAsHighAsItNeeds() throws Exception {
    Rack rack =
        solve(SEED_TRAYS, POT, "rack.openings=[{for: pot, count: 2}, 300, {for: seed tray}]");

    assertEquals(mm("255", "255", "300", "372"), rack.openings());
    assertEquals(
        "foot 100*, rail 44, slat 18, clear 255*, rail 44, slat 18, clear 255*, rail 44, slat 18,"
            + " clear 300, rail 44, slat 18, clear 372*, rail 44, slat 18",
        links(rack, "height"));
  }

  @Test
  void uprightsAreSharedByAsManyOpeningsAsTakeTheHighest() throws Exception {
    // 1500 - 100 - 4 x 62 = 1152 = 3 x 384; four would have (1152 - 62) / 4 = 272
    Rack rack = solve(SEED_TRAYS, "rack.upright=1500");

    assertEquals(mm("384", "384", "384"), rack.openings());
    assertEquals(
        "3 even openings: as many as take 6 × seed tray of 60 mm and 12 mm above, 372 mm",
        note(rack, "rack.openings"));
  }

  @Test
  void gapsOfAGivenNumberOfSlatsWidenForTheThingFirst() throws Exception {
    // 5 x 95 + 4 x 11 = 519 is too short; 569 would need gaps of 23, within the range given here
    Rack rack = solve(SEED_TRAYS, "slats.per-shelf=5", "slats.gap-range=3..25");

    // the middle, 14, gives 531; (569 - 475) / 4 = 23.5
    assertEquals(Length.mm(569), rack.rail().length());
    assertEquals(Length.mm(23), rack.slats().gap());
    assertEquals(
        "the rails are 569 mm: seed tray of 545 mm and 12 mm before and behind each",
        note(rack, "rack.rail-length"));
  }

  @Test
  void gapsWiderThanUsualAreWarnedOfWhereTheNumberOfSlatsAsksForThem() throws Exception {
    // (569 - 475) / 4 = 23.5, and the usual gaps are 3 to 20
    Rack rack = solve(SEED_TRAYS, "slats.per-shelf=5");

    assertEquals(Length.mm(569), rack.rail().length());
    assertEquals(
        "the gap between slats is 23 mm, outside the usual 3 mm to 20 mm", note(rack, "slats.gap"));
  }

  @Test
  void slatsThatCannotReachFarEnoughAreAnErrorWithTheNumberThatCan() throws Exception {
    // 5 x 95 + 4 x 20 = 555; 569 - 555 = 14; 6 x 95 + 5 x 11 = 625
    String range = "slats.gap-range=3..20";
    Rack rack = solve(SEED_TRAYS, "slats.per-shelf=5", range);

    assertEquals(Length.mm(555), rack.rail().length());
    assertEquals(
        List.of(
            "error seed tray: 14 mm too deep for the rails: 569 mm, at most 555 mm"
                + " (set slats.per-shelf=6)"),
        found(rack));
    assertEquals(List.of(), found(solve(SEED_TRAYS, "slats.per-shelf=6", range)));
  }

  @Test
  void slatsThatReachFarEnoughAnywayKeepTheirUsualGap() throws Exception {
    // 6 x 95 + 5 x 11 = 625
    Rack rack = solve(SEED_TRAYS, "slats.per-shelf=6");

    assertEquals(Length.mm(625), rack.rail().length());
    assertEquals(
        "the rails are 625 mm: what 6 slats of 95 mm take", note(rack, "rack.rail-length"));
  }

  @Test
  void aGivenGapLeavesTheRestAsMargins() throws Exception {
    // 5 x 95 + 4 x 8 = 507; 569 - 507 = 62
    Rack rack = solve(SEED_TRAYS, "slats.gap=8");

    assertEquals(
        "margin 31*, slat 95, gap 8, slat 95, gap 8, slat 95, gap 8, slat 95, gap 8, slat 95, margin"
            + " 31*",
        links(rack, "slat row"));
  }

  @Test
  void slatsWhoseNumberAndGapAreGivenDecideAndTheThingIsChecked() throws Exception {
    // 5 x 95 + 4 x 10 = 515; 569 - 515 = 54; 6 x 95 + 5 x 10 = 620
    Rack rack = solve(SEED_TRAYS, "slats.per-shelf=5", "slats.gap=10");

    assertEquals(Length.mm(515), rack.rail().length());
    assertEquals(
        List.of(
            "error seed tray: 54 mm too deep for the rails: 569 mm, at most 515 mm"
                + " (set slats.per-shelf=6)"),
        found(rack));
  }

  @Test
  void dowelsMayAskForLongerRailsThanTheThing() throws Exception {
    // two holes of 60 + 2 must not meet, so more than 124; one slat leaves 15 + 15 bare
    Rack rack =
        solve(
            SEED_TRAYS,
            "holds=[{name: cutting, width: 60, depth: 60, height: 90}]",
            "joint.embedment=60");

    assertEquals(Length.mm(125), rack.rail().length());
    assertEquals(Length.mm(60), rack.interiorWidth());
  }

  @Test
  void solvedSizesSnapUp() throws Exception {
    Rack rack =
        solve(
            SEED_TRAYS,
            "holds=[{name: tile, width: 150.4, depth: 200, height: 9.5, across: 2}]",
            "increment=5");

    assertEquals(Length.mm(305), rack.interiorWidth());
    assertEquals(
        "305 mm between two frames: 2 × tile of 150.4 mm, rounded up to the next 5 mm",
        note(rack, "rack.interior-width"));
    assertEquals(mm("10"), rack.openings());
  }

  @Test
  void whatMayLieEitherWayTurnsOnlyWhereItFitsNoOtherWay() throws Exception {
    String either = "holds=[{name: crate, width: 300, depth: 500, height: 200, lie: either-way}]";

    assertEquals(Length.mm(300), solve(SEED_TRAYS, either).interiorWidth());
    Rack shallow = solve(SEED_TRAYS, either, "rack.rail-length=320");
    assertEquals(Length.mm(500), shallow.interiorWidth());
    assertEquals(
        "crate lies with its depth along the shelf: the other way it does not fit",
        note(shallow, "holds"));
    assertEquals(true, shallow.fits().get(0).turned());
    Rack narrow = solve(SEED_TRAYS, either, "rack.interior-width=400");
    assertEquals(false, narrow.fits().get(0).turned());
    assertEquals(List.of(), found(narrow));
  }

  @Test
  void whatIsTooWideIsAnErrorWithTheWidthThatTakesIt() throws Exception {
    Rack rack = solve(SEED_TRAYS, "rack.interior-width=580");

    assertEquals(
        List.of(
            "error seed tray: 26 mm too wide to go between two frames: 606 mm, at most 580 mm"
                + " (set rack.interior-width=606)"),
        found(rack));
    assertEquals(
        List.of(), found(solve(SEED_TRAYS, "rack.interior-width=606")), "the advice is right");
  }

  @Test
  void railsThatTakeItAndCloseAreAdvised() throws Exception {
    // gaps must keep to 3..20, so rails of 569 do not close, as above
    String range = "slats.gap-range=3..20";
    Rack rack = solve(SEED_TRAYS, "rack.rail-length=500", range);

    assertEquals(
        List.of(
            "error seed tray: 69 mm too deep for the rails: 569 mm, at most 500 mm"
                + " (set rack.rail-length=585)"),
        found(rack));
    assertEquals(List.of(), found(solve(SEED_TRAYS, "rack.rail-length=585", range)));
  }

  @Test
  void whatIsTooHighForEveryOpeningMayStandOnTop() throws Exception {
    String[] settings = {POT, "rack.openings=[240, {for: pot}]"};
    Rack rack = solve(SEED_TRAYS, settings);

    assertEquals(
        List.of(
            "warning seed tray: 117 mm too high for every opening; only the top shelf is open: 372"
                + " mm, at most 255 mm (set rack.openings[0]=372)"),
        found(rack));
    assertEquals(List.of(), found(solve(SEED_TRAYS, POT, "rack.openings=[372, {for: pot}]")));
  }

  @Test
  void longerUprightsAreAdvisedWhereEvenOpeningsAreTooLow() throws Exception {
    // 1300 - 100 - 4 x 62 = 952 = 3 x 317 + 1; 3 x (372 - 317) = 165
    Rack rack = solve(SEED_TRAYS, "rack.upright=1300", "rack.openings=[{clear: even, count: 3}]");

    assertEquals(
        List.of(
            "warning seed tray: 55 mm too high for every opening; only the top shelf is open: 372 mm,"
                + " at most 317 mm (set rack.upright=1465)"),
        found(rack));
  }

  @Test
  void whereTheStockIsTooShortForLongerUprightsFewerShelvesAreAdvised() throws Exception {
    // 1320 - 2 x 10 mm of end trim = 1300; with two openings (952 + 62) / 2 = 507
    Rack rack =
        solve(
            SEED_TRAYS,
            "timber.frame.lengths=[{length: 1320}]",
            "rack.upright=1300",
            "rack.openings=[{clear: even, count: 3}]");

    assertEquals(
        List.of(
            "warning seed tray: 55 mm too high for every opening; only the top shelf is open: 372 mm,"
                + " at most 317 mm (set rack.openings=[{clear: even, count: 2}])"),
        found(rack));
  }

  @Test
  void aWidthThatTheStockForbidsIsNotAdvised() throws Exception {
    // slats of 606 + 2 x 44 = 694 do not come out of 700 - 2 x 10
    Rack rack =
        solve(SEED_TRAYS, "rack.interior-width=580", "timber.slats.lengths=[{length: 700}]");

    assertEquals(
        List.of(
            "error seed tray: 26 mm too wide to go between two frames: 606 mm, at most 580 mm (no"
                + " single size makes room for it: change more than one, or ask for less in holds)"),
        found(rack));
  }

  @Test
  void whatFitsIsToldShelfByShelfWithTheSlack() throws Exception {
    Rack rack =
        solve(
            SEED_TRAYS,
            "rack.interior-width=640",
            "rack.rail-length=620",
            "rack.openings=[400, 50]");

    assertEquals(
        List.of(
            // 640 - 606, 620 - 569, 400 - 372
            fit(1, 2, 1, Optional.of(6), 34, 51, Optional.of(28), true),
            // one lacks 60 + 12 - 50
            fit(2, 2, 1, Optional.of(0), 34, 51, Optional.of(-22), false),
            fit(3, 2, 1, Optional.empty(), 34, 51, Optional.empty(), true)),
        rack.fits());
  }

  @Test
  void whatDoesNotFitLacksWhatOneLacks() throws Exception {
    // 285 + 2 x 12 = 309, 545 + 2 x 12 = 569
    Rack rack = solve(SEED_TRAYS, "rack.interior-width=300", "rack.rail-length=500");

    assertEquals(fit(1, 0, 0, Optional.of(6), -9, -69, Optional.of(0), false), rack.fits().get(0));
  }

  @Test
  void aSizeThatClosesButLeavesTheThingOutIsNotProposedBesideOthers() throws Exception {
    // 150 + 2 x 62 + 372 = 646; an opening of 322 would close, but is lower than 372
    String[] settings = {"rack.upright=596", "rack.foot=150", "rack.openings=[372]"};

    assertEquals(
        List.of("rack.upright=646", "rack.foot=100"),
        provenChanges(problem(SEED_TRAYS, settings), SEED_TRAYS, settings));
  }

  @Test
  void uprightsTooShortForWhatTheyHoldAreProposedLongerOrWithFewerOpenings() throws Exception {
    // 5 x 62 + 3 x 255 + 372 = 1447, and 100 for the foot; 1200 - 4 x 62 - 2 x 255 - 372 = 70
    String[] settings = {
      POT, "rack.upright=1200", "rack.openings=[{for: pot, count: 3}, {for: seed tray}]"
    };
    Problem problem = problem(SEED_TRAYS, settings);

    assertEquals(
        List.of("rack.upright=1547", "rack.openings[0].count=2"),
        provenChanges(problem, SEED_TRAYS, settings));
    assertEquals("2 openings for pot instead of 3", problem.changes().get(1).words());
  }

  @Test
  void evenOpeningsBesideThoseForThingsGetTheirHeightFromLongerUprights() throws Exception {
    // 100 + 4 x 62 + 255 + 372 = 975 leaves none; with an even one as high as for the pot 1230
    String[] settings = {
      POT, "rack.upright=900", "rack.openings=[{for: pot}, even, {for: seed tray}]"
    };
    Problem problem = problem(SEED_TRAYS, settings);

    assertEquals("rack.upright=1230", provenChanges(problem, SEED_TRAYS, settings).get(0));
    assertEquals(
        mm("255", "255", "372"),
        solve(SEED_TRAYS, POT, settings[2], "rack.upright=1230").openings());
  }

  private static Fit fit(
      int shelf,
      int across,
      int deep,
      Optional<Integer> high,
      long spareAcross,
      long spareDeep,
      Optional<Integer> spareAbove,
      boolean enough) {
    return new Fit(
        "seed tray",
        shelf,
        false,
        across,
        deep,
        high,
        Length.mm(spareAcross),
        Length.mm(spareDeep),
        spareAbove.map(Length::mm),
        enough);
  }

  /** What the rule finds, as {@code severity subject: message: value, limit (advice)}. */
  private static List<String> found(Rack rack) {
    return rack.notes().stream()
        .filter(finding -> finding.rule().equals("holds"))
        .filter(finding -> finding.severity() != Severity.NOTE)
        .map(HoldsTest::spelt)
        .toList();
  }

  private static String spelt(Finding finding) {
    return "%s %s: %s: %s, %s (%s)"
        .formatted(
            finding.severity().word(),
            finding.subject(),
            finding.message(),
            finding.value(),
            finding.limit(),
            finding.advice());
  }
}
