package org.slatwright.design.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.api.plan.CutBoard.Source;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.StopSetting;

/** Of a rack of four uprights of 1000, four rails of 300 and two shelves of two slats of 488. */
class CuttingTest {

  private static final String RACK =
      """
      slatwright: 1
      title: Rack
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10, rod-length: 1000 }
      rack:
        interior-width: 400
        rail-length: 300
        upright: 1000
        openings: [ even ]
      slats: { per-shelf: 2 }
      joint: { fixing: { kind: brad, length: 40, diameter: 1.2 } }
      shop: { kerf: 3, end-trim: 10 }
      """;

  private static final String FRAME = "timber.frame.lengths=";
  private static final String SLATS = "timber.slats.lengths=";

  /** From the squared end: 10 + 1000 + 3 = 1013, and 1000 + 3 on. */
  @Test
  void piecesLieFromTheFirstEndOnWithAKerfBetween() {
    Sawn sawn = Sawn.of(RACK, FRAME + "[{ length: 2400, price: 5.90 }]");

    CutBoard first = sawn.timber(Stock.FRAME).boards().get(0);
    assertEquals(
        List.of(Length.mm(10), Length.mm(1013), Length.mm(2016)),
        first.cuts().stream().limit(3).map(CutBoard.Cut::from).toList());
    assertEquals(Source.BOUGHT, first.source());
  }

  /**
   * Wanted are 4 × 1000 and 4 × 300. Two of 2400 give 2 × 1000 + 300 each, so a third is needed for
   * two rails: 17.70. Two of 2700 give 2 × 1000 + 2 × 300 + 9 = 2609 of 2680 each: 13.80.
   */
  @Test
  void theCheapestLengthsAreBought() {
    Sawn sawn =
        Sawn.of(RACK, FRAME + "[{ length: 2400, price: 5.90 }, { length: 2700, price: 6.90 }]");

    assertEquals(List.of("F1 F2: U U R R"), sawn.boards(Stock.FRAME));
    assertEquals(
        "2 × norway spruce, frame stock 44 × 44 mm of 2700 mm at 6.90 = 13.80",
        sawn.buying().get(0));
    assertEquals("proved: no plan costs less than 13.80", sawn.timber(Stock.FRAME).quality());
    assertEquals(Optional.of("13.80"), sawn.plan().cost().map(Object::toString));
  }

  @Test
  void theSameBoardsInTheOrderOfTheStopBlock() {
    Sawn sawn = Sawn.of(RACK, FRAME + "[{ length: 2700, price: 6.90 }]");

    assertEquals(
        List.of(
            new StopSetting(
                Length.mm(1000),
                List.of(new StopSetting.Work("F1", "U", 2), new StopSetting.Work("F2", "U", 2))),
            new StopSetting(
                Length.mm(300),
                List.of(new StopSetting.Work("F1", "R", 2), new StopSetting.Work("F2", "R", 2)))),
        sawn.timber(Stock.FRAME).settings());
  }

  /**
   * The lower spacer, 282 clear and a slat of 18, is as long as a rail. Four lengths take four
   * settings, however the boards are cut.
   */
  @Test
  void theStopBlockIsSetOnceForEachLength() {
    Sawn sawn =
        Sawn.of(
            RACK.replace("openings: [ even ]", "openings: [ 282, even ]"),
            FRAME + "[{ length: 2700, price: 6.90 }]");

    List<StopSetting> settings = sawn.timber(Stock.FRAME).settings();
    assertEquals(
        List.of(Length.mm(1000), Length.mm(300), Length.mm(450), Length.mm(400)),
        settings.stream().map(StopSetting::length).toList());
    assertEquals(
        List.of(
            new StopSetting.Work("F1", "R", 2),
            new StopSetting.Work("F2", "R", 2),
            new StopSetting.Work("F3", "R", 2),
            new StopSetting.Work("F3", "X3", 1)),
        settings.get(1).works());
  }

  /** With what is on hand for two uprights and two rails, one length less is bought. */
  @Test
  void whatIsOnHandCostsNothing() {
    Sawn sawn =
        Sawn.of(RACK, FRAME + "[{ length: 2700, price: 6.90 }, { length: 2640, on-hand: 1 }]");

    assertEquals(Optional.of("6.90"), sawn.plan().cost().map(Object::toString));
    assertEquals(
        1,
        sawn.timber(Stock.FRAME).boards().stream()
            .filter(board -> board.source() == Source.ON_HAND)
            .mapToInt(board -> board.marks().size())
            .sum());
  }

  @Test
  void whatIsGivenAwayIsBoughtAllTheSame() {
    Sawn sawn =
        Sawn.of(
            RACK,
            FRAME + "[{ length: 2700, price: 0.00 }]",
            SLATS + "[{ length: 2000, on-hand: 4 }, { length: 3000, price: 4 }]");

    assertEquals("what is bought costs nothing", sawn.timber(Stock.FRAME).quality());
    assertEquals("nothing needs to be bought", sawn.timber(Stock.SLAT).quality());
    assertEquals(
        "2 × norway spruce, frame stock 44 × 44 mm of 2700 mm at 0.00 = 0.00",
        sawn.buying().get(0));
  }

  @Test
  void withoutPricesTheLeastTimberIsBought() {
    Sawn sawn = Sawn.of(RACK, FRAME + "[{ length: 2700 }, { length: 5300 }]");

    assertEquals(
        "proved: no plan takes less timber than 5300 mm", sawn.timber(Stock.FRAME).quality());
    assertEquals(Optional.empty(), sawn.plan().cost());
  }

  /** 3.00 a metre is the dearest, so that 5300 without a price counts 15.90, and 13.80 is less. */
  @Test
  void whatHasNoPriceIsReckonedAsTheDearest() {
    Sawn sawn =
        Sawn.of(
            RACK,
            FRAME
                + "[{ length: 1030, price: 3.09 }, { length: 2700, price: 6.90 },"
                + " { length: 5300 }]");

    assertEquals(
        "proved: no plan costs less than 13.80, what has no price reckoned as dear as the dearest",
        sawn.timber(Stock.FRAME).quality());
  }

  /** Each of 1030 gives an upright or three rails: of four, two pieces at least are missing. */
  @Test
  void whatIsMissingIsToldWithWhatWouldGiveIt() {
    Sawn sawn = Sawn.of(RACK, FRAME + "[{ length: 1030, on-hand: 4 }]");

    assertEquals(
        2, sawn.timber(Stock.FRAME).missing().stream().mapToInt(missing -> missing.count()).sum());
    assertEquals(
        List.of(
            "timber.frame.lengths: what there is does not give 1 of the 4 uprights of 1000 mm, and"
                + " 1 of the 4 rails of 300 mm; 2 more of at least 1020 mm, or fewer that are"
                + " longer"),
        sawn.findings());
    assertEquals(
        "not enough timber: missing 1 upright, 1 rail", sawn.timber(Stock.FRAME).quality());
  }

  /** 2 × 1000 + 3 + 20 = 2023: one rail is missing, and a length of 320 gives it. */
  @Test
  void theAdviceGivesWhatIsMissing() {
    String short1 = "{ length: 2700, on-hand: 1 }, { length: 2400, on-hand: 1 }";
    Sawn sawn = Sawn.of(RACK, FRAME + "[" + short1 + "]");

    assertEquals(
        List.of(
            "timber.frame.lengths: what there is does not give 1 of the 4 rails of 300 mm; 1 more"
                + " of at least 320 mm"),
        sawn.findings());
    assertEquals(
        List.of(),
        Sawn.of(RACK, FRAME + "[" + short1 + ", { length: 320, on-hand: 1 }]").findings());
  }

  /**
   * The boards of the least price leave 2700 - 10 - 2612 = 78 - 10 squared off: no part, no use.
   */
  @Test
  void aShortRestIsNotKept() {
    Sawn sawn = Sawn.of(RACK, FRAME + "[{ length: 2700, price: 6.90 }]");

    assertEquals(
        List.of(new Offcut(Length.mm(2622), Length.mm(78), Length.ZERO, Length.mm(44), false, "")),
        sawn.timber(Stock.FRAME).boards().get(0).offcuts());
  }

  /** Four slats of 488 are 1964 with their kerfs: 3016 is left of 4980, for 2 × 400 and more. */
  @Test
  void sparePiecesTakeWhatIsOverAndCostNothing() {
    Sawn sawn = Sawn.of(RACK, SLATS + "[{ length: 5000, price: 8 }]");

    SparePiece spacer = sawn.spare("spacer as wide as the interior");
    assertEquals(Length.mm(400), spacer.length());
    assertEquals(2, spacer.fromOffcuts());
    assertEquals(Stock.SLAT, spacer.stock());
    assertEquals(Optional.of("8.00"), sawn.plan().cost().map(Object::toString));
  }

  /** Four slats take all: 4 × 488 + 3 × 3 + 20 = 1981. */
  @Test
  void whereNothingIsOverTheySayHowMany() {
    Sawn sawn = Sawn.of(RACK, SLATS + "[{ length: 1981, price: 8 }]");

    assertTrue(sawn.plan().spares().stream().allMatch(spare -> spare.fromOffcuts() == 0));
  }

  /** A spacer holds the rails as far apart as they come to lie: clear height and slat. */
  @Test
  void spacersBetweenRailsAreAsHighAsTheOpeningAndTheSlat() {
    Sawn sawn = Sawn.of(RACK);

    assertEquals(
        sawn.rack().openings().get(0).plus(Length.mm(18)),
        sawn.spare("spacer between two rails").length());
  }

  /**
   * 199 wide gives two strips of 95, 3 between; 999 long less its ends gives two of 488 in each.
   */
  @Test
  void aBoardIsRippedIntoStripsFirst() {
    Sawn sawn =
        Sawn.of(RACK, "timber.slats.boards=[{ length: 999, width: 199, thickness: 18, count: 2 }]");

    CutBoard board = sawn.timber(Stock.SLAT).boards().get(0);
    assertEquals(List.of("B1"), board.marks());
    assertEquals(Source.RECLAIMED, board.source());
    assertEquals(
        List.of(Length.ZERO, Length.mm(98), Length.ZERO, Length.mm(98)),
        board.cuts().stream().map(CutBoard.Cut::across).toList());
    assertEquals(
        List.of(new Offcut(Length.ZERO, Length.mm(999), Length.mm(196), Length.mm(3), false, "")),
        board.offcuts());
    assertEquals(1, sawn.timber(Stock.SLAT).boards().size());
  }

  /**
   * 600 wide would give six strips of 95. The first gives the four slats, spare pieces lie in two
   * more, and from 294 on the board stays whole: 306, of which three strips give four slats each.
   */
  @Test
  void aBoardIsRippedNoFurtherThanItIsCut() {
    Sawn sawn = Sawn.of(RACK, "timber.slats.boards=[{ length: 2000, width: 600, thickness: 18 }]");

    CutBoard board = sawn.timber(Stock.SLAT).boards().get(0);
    assertEquals(
        List.of(Length.ZERO, Length.mm(98), Length.mm(196)),
        board.cuts().stream().map(CutBoard.Cut::across).distinct().sorted().toList());
    Offcut whole = board.offcuts().get(board.offcuts().size() - 1);
    assertEquals(
        new Offcut(
            Length.mm(10), Length.mm(1990), Length.mm(294), Length.mm(306), true, "12 slats"),
        whole);
  }

  /**
   * Slats lie in the first strip, spare pieces in the second; 2500 less an end is 430 behind it.
   */
  @Test
  void whatIsAvoidedPartsWhatStaysWhole() {
    Sawn sawn =
        Sawn.of(
            RACK,
            "timber.slats.boards=[{ length: 2500, width: 400, thickness: 18, avoid: [ 2010..2070 ]"
                + " }]");

    assertEquals(
        List.of(
            new Offcut(
                Length.mm(10), Length.mm(2000), Length.mm(196), Length.mm(204), true, "8 slats"),
            new Offcut(Length.mm(2070), Length.mm(430), Length.mm(196), Length.mm(204), true, "")),
        sawn.timber(Stock.SLAT).boards().get(0).offcuts().stream()
            .filter(offcut -> offcut.across().equals(Length.mm(196)))
            .toList());
  }

  /** 500 before the bad place and 510 behind it: each gives one slat of 488. */
  @Test
  void whatIsAvoidedHoldsNoPiece() {
    Sawn sawn =
        Sawn.of(
            RACK,
            "timber.slats.boards=[{ length: 1100, width: 95, thickness: 18, count: 2,"
                + " avoid: [ 510..580 ] }]");

    assertEquals(List.of("B1 B2: S S"), sawn.boards(Stock.SLAT));
    assertEquals(
        List.of(Length.mm(10), Length.mm(580)),
        sawn.timber(Stock.SLAT).boards().get(0).cuts().stream().map(CutBoard.Cut::from).toList());
  }

  /** Boards cost nothing, so that only the last two slats are bought: 2 × 488 + 3 + 20 = 999. */
  @Test
  void boardsComeBeforeWhatMustBeBought() {
    Sawn sawn =
        Sawn.of(
            RACK,
            "timber.slats.boards=[{ length: 999, width: 95, thickness: 18 }]",
            SLATS + "[{ length: 999, price: 4 }]");

    assertEquals(Optional.of("4.00"), sawn.plan().cost().map(Object::toString));
    assertEquals(List.of("T1: S S", "B1: S S"), sorted(sawn.boards(Stock.SLAT)));
  }

  private static List<String> sorted(List<String> boards) {
    return boards.stream().sorted(Comparator.reverseOrder()).toList();
  }

  /** 4 × 1000 + 4 × 300 + 7 × 3 = 5221. */
  @Test
  void timberWithoutLengthsIsBoughtByItsRunningLength() {
    Sawn sawn = Sawn.of(RACK);

    assertEquals("norway spruce, frame stock 44 × 44 mm of 5221 mm", sawn.buying().get(0));
    assertEquals(
        "in all, cuts included, in lengths that give pieces of 1000 mm",
        sawn.plan().buying().get(0).note());
  }

  @Test
  void dowelsBoughtCutAreCounted() {
    String bought = "timber.dowel={ diameter: 10, length: 70, price: 0.12 }";
    Sawn sawn = Sawn.of(RACK.replaceFirst("dowel: .*", ""), bought);

    assertTrue(
        sawn.buying().contains("8 × hardwood, dowel rod 10 mm of 70 mm at 0.12 = 0.96"),
        sawn.buying().toString());
  }

  /** Two slats cross two frames with two brads each, on two shelves. */
  @Test
  void fixingsAndGlueAreBoughtToo() {
    List<String> buying = Sawn.of(RACK).buying();

    assertEquals(
        List.of("16 × brad 40 × 1.2 mm", "wood glue"),
        buying.subList(buying.size() - 2, buying.size()));
  }

  /** 44 × 44 × 2700 twice is 10 454 400 mm³. */
  @Test
  void theVolumeIsOfTheTimberThatIsBought() {
    Sawn sawn =
        Sawn.of(
            RACK,
            FRAME + "[{ length: 2700 }]",
            "timber.slats.boards=[{ length: 999, width: 199, thickness: 18, count: 2 }]");

    assertEquals(10_454_400, sawn.plan().volume().cubicMillimetres());
  }

  /** The end of a dowel is chamfered, not squared. */
  @Test
  void rodIsCutWithoutTrim() {
    CutBoard rod = Sawn.of(RACK).timber(Stock.DOWEL_ROD).boards().get(0);

    assertEquals(Length.ZERO, rod.cuts().get(0).from());
  }
}
