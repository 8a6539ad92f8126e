package org.slatwright.design.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.BoardChoice.Row;
import org.slatwright.design.boards.BoardChoice.Slat;

/** What a maker with a heap of boards gets; every number reckoned by hand beside its test. */
class BoardChooserTest {

  /** Four slats leave 450 - (2 × 118 + 2 × 92) = 30: three gaps of 10. */
  @Test
  void twelvePalletBoardsOf92And118FillThreeShelves() {
    List<Board> boards = new ArrayList<>(Collections.nCopies(6, pallet(92)));
    boards.addAll(Collections.nCopies(6, pallet(118)));
    BoardChoice choice = BoardChooser.choose(boards, shelves(3), rules(450, 3, 20));
    for (Row row : choice.rows()) {
      assertTrue(row.isFilled());
      assertEquals(mm(118, 118, 92, 92), row.slats().stream().map(Slat::width).toList());
      assertEquals(Length.mm(10), row.gap());
      assertEquals(Length.ZERO, row.frontMargin());
      assertEquals(Length.ZERO, row.backMargin());
    }
  }

  /** 600 + 3.2 + 600 fits 1230; either side of the split there are 610 and 590. */
  @Test
  void aSplitInTheMiddleCostsOneSlat() {
    Board sound = EveryChoice.board(1250, 92, 20, 10, 1240);
    Board split = EveryChoice.board(1250, 92, 20, 10, 620, 650, 1240);
    RowRules rules = rules(100, 3, 20);
    assertEquals(2, filled(BoardChooser.choose(List.of(sound), shelves(2), rules)));
    BoardChoice choice = BoardChooser.choose(List.of(split), shelves(2), rules);
    assertTrue(choice.rows().get(0).isFilled(), "the lower shelf");
    assertFalse(choice.rows().get(1).isFilled());
    assertEquals(Length.mm(10), source(choice, 0, 0).from());
  }

  /** 100 + 3.2 leaves 96.8 of the 200; whole millimetres are set at the fence. */
  @Test
  void a200BoardIsRippedBecauseNothingElseCloses() {
    BoardChoice choice =
        BoardChooser.choose(
            List.of(EveryChoice.board(640, 200, 20, 10, 630)), shelves(2), rules(100, 3, 20));
    assertEquals(2, filled(choice));
    assertEquals(Length.mm(100), choice.rows().get(0).slats().get(0).width());
    assertEquals(Length.mm(96), choice.rows().get(1).slats().get(0).width());
    assertTrue(source(choice, 0, 0).ripped() && source(choice, 1, 0).ripped());
    assertEquals(Length.ZERO, source(choice, 0, 0).across());
    assertEquals(Length.roundedMm(103.2), source(choice, 1, 0).across());
  }

  /** The 92 lies within margins of 4. */
  @Test
  void nothingIsRippedWhereAWholeBoardCloses() {
    List<Board> boards =
        List.of(EveryChoice.board(640, 200, 20, 10, 630), EveryChoice.board(640, 92, 20, 10, 630));
    BoardChoice choice = BoardChooser.choose(boards, shelves(1), rules(100, 3, 20));
    assertEquals(1, source(choice, 0, 0).board());
    assertFalse(source(choice, 0, 0).ripped());
    assertEquals(Length.mm(4), choice.rows().get(0).frontMargin());
  }

  /** One more of 92 leaves 300 - 276 = 24 for two gaps. */
  @Test
  void whatIsMissingIsAsWideAndThickAsTheOthers() {
    BoardChoice choice =
        BoardChooser.choose(Collections.nCopies(2, pallet(92)), shelves(1), rules(300, 3, 20));
    Row row = choice.rows().get(0);
    assertFalse(row.isFilled());
    assertEquals(1, row.slats().stream().filter(slat -> slat.source().isEmpty()).count());
    assertEquals(mm(92, 92, 92), row.slats().stream().map(Slat::width).toList());
    assertEquals(mm(20, 20, 20), row.slats().stream().map(Slat::thickness).toList());
    assertEquals(Length.mm(12), row.gap());
  }

  /** 2 × 92 + 10 leaves 10 of 204. */
  @Test
  void aGivenGapIsKeptAndTheMarginsTakeTheRest() {
    BoardChoice choice =
        BoardChooser.choose(Collections.nCopies(2, pallet(92)), shelves(1), rules(204, 10, 10));
    Row row = choice.rows().get(0);
    assertTrue(row.isFilled());
    assertEquals(Length.mm(10), row.gap());
    assertEquals(Length.mm(5), row.frontMargin());
    assertEquals(Length.mm(5), row.backMargin());
  }

  /** 205 leaves 205 - 184 = 21: a gap of 20, and 1 that goes to the back. */
  @Test
  void theLargerHalfOfWhatIsLeftGoesToTheBack() {
    Row row =
        BoardChooser.choose(Collections.nCopies(2, pallet(92)), shelves(1), rules(205, 3, 20))
            .rows()
            .get(0);
    assertEquals(Length.mm(20), row.gap());
    assertEquals(Length.ZERO, row.frontMargin());
    assertEquals(Length.mm(1), row.backMargin());
  }

  /**
   * {98, 98} and {92, 92} would leave gaps of 4 and 16 on rails of 200, and waste as little. The
   * middle of 3 to 20 is 11.5.
   */
  @Test
  void gapsAreAlikeFromShelfToShelf() {
    List<Board> boards = List.of(pallet(98), pallet(98), pallet(92), pallet(92));
    BoardChoice choice = BoardChooser.choose(boards, shelves(2), rules(200, 3, 20));
    for (Row row : choice.rows()) {
      assertEquals(mm(98, 92), row.slats().stream().map(Slat::width).toList());
      assertEquals(Length.mm(10), row.gap());
    }
    assertTrue(choice.proved());
  }

  /**
   * The 100 alone leaves gaps of 20, the 109 of 11; but it is cut from a board that wastes less.
   */
  @Test
  void wasteCountsBeforeGaps() {
    Board narrow = EveryChoice.board(620, 100, 20, 10, 610);
    Board wide = EveryChoice.board(1200, 109, 20, 10, 1190);
    BoardChoice choice =
        BoardChooser.choose(List.of(wide, narrow, pallet(100)), shelves(1), rules(220, 3, 20));
    assertEquals(mm(100, 100), widths(choice.rows().get(0)));
  }

  /**
   * Pairs of 71 + 119, 72 + 118, … 94 + 96 are 190 wide: four pairs and seven gaps of 10 make 830.
   * No board is like another, and all are needed.
   */
  @Test
  void fortyEightBoardsEachOfItsOwnWidthFillSixShelvesWithEvenGaps() {
    BoardChoice choice = BoardChooser.choose(unlike(71, 190), shelves(6), eightOn(830));
    for (Row row : choice.rows()) {
      assertTrue(row.isFilled());
      assertTrue(row.slats().stream().noneMatch(s -> s.source().orElseThrow().ripped()));
      assertTrue(!row.gap().isLessThan(Length.mm(9)) && !row.gap().isMoreThan(Length.mm(10)));
    }
    assertFalse(choice.proved());
  }

  /**
   * 58 + 82, 59 + 81, … 69 + 71 are 140 wide: four pairs and seven gaps of 10 make 630. All are too
   * narrow for two strips of 40, so that 24 - 3 = 2 × 8 + 5 boards give 21 slats.
   */
  @Test
  void ofUnlikeBoardsNoMoreAreMissingThanMustBe() {
    List<Board> boards = unlike(58, 140).subList(0, 21);
    BoardChoice choice = BoardChooser.choose(boards, shelves(3), eightOn(630));
    assertEquals(2, filled(choice));
    assertEquals(
        3, choice.rows().get(2).slats().stream().filter(slat -> slat.source().isEmpty()).count());
  }

  /** All of different widths: pairs of that width in all, from the narrowest up. */
  private static List<Board> unlike(int narrowest, int pair) {
    return IntStream.range(narrowest, (pair + 1) / 2)
        .boxed()
        .flatMap(width -> Stream.of(pallet(width), pallet(pair - width)))
        .toList();
  }

  private static RowRules eightOn(int rail) {
    return new RowRules(
        Length.mm(rail),
        Length.mm(3),
        Length.mm(20),
        Length.mm(20),
        Optional.of(8),
        Length.mm(1),
        Length.mm(1),
        Length.mm(3));
  }

  /** 18 and 22 are further apart than 1, so that each pair fills a shelf of its own. */
  @Test
  void thickAndThinSlatsLieOnDifferentShelves() {
    List<Board> boards = new ArrayList<>();
    for (long thickness : new long[] {18, 22, 18, 22}) {
      boards.add(EveryChoice.board(640, 92, thickness, 10, 630));
    }
    BoardChoice choice = BoardChooser.choose(boards, shelves(2), rules(200, 3, 20));
    assertEquals(2, filled(choice));
    for (Row row : choice.rows()) {
      assertEquals(row.slats().get(0).thickness(), row.slats().get(1).thickness());
    }
  }

  /** 600 + 3.2 + 450 = 1053.2; and 1 mm less gives only one of them. */
  @Test
  void aStretchGivesSlatsOfTwoLengths() {
    List<RowNeed> needs =
        List.of(new RowNeed(0, 0, Length.mm(600)), new RowNeed(0, 1, Length.mm(450)));
    RowRules rules = rules(100, 3, 20);
    Board enough = EveryChoice.board(1074, 92, 20, 10, 1064);
    Board short1 = EveryChoice.board(1073, 92, 20, 10, 1063);
    assertEquals(2, filled(BoardChooser.choose(List.of(enough), needs, rules)));
    assertEquals(1, filled(BoardChooser.choose(List.of(short1), needs, rules)));
  }

  /** The long board gives both, 600 + 3.2 + 600 = 1203.2, and the short one is not needed. */
  @Test
  void wholeBoardsAreLeftUntouched() {
    Board one = EveryChoice.board(640, 92, 20, 0, 640);
    Board two = EveryChoice.board(1204, 92, 20, 0, 1204);
    BoardChoice choice = BoardChooser.choose(List.of(one, two), shelves(2), rules(100, 3, 20));
    assertEquals(1, source(choice, 0, 0).board());
    assertEquals(1, source(choice, 1, 0).board());
  }

  @Test
  void rowsAreAnsweredInTheOrderAskedForAndFilledFromTheFloor() {
    List<RowNeed> topFirst = List.of(shelves(2).get(1), shelves(2).get(0));
    BoardChoice choice = BoardChooser.choose(List.of(pallet(92)), topFirst, rules(100, 3, 20));
    assertEquals(topFirst, choice.rows().stream().map(Row::need).toList());
    assertFalse(choice.rows().get(0).isFilled());
    assertTrue(choice.rows().get(1).isFilled());
  }

  @Test
  void aRailTooShortForTheGapsAloneIsRefused() {
    RowRules rules =
        new RowRules(
            Length.mm(20),
            Length.mm(10),
            Length.mm(20),
            Length.mm(20),
            Optional.of(3),
            Length.mm(1),
            Length.mm(1),
            Length.mm(3));
    assertThrows(
        IllegalArgumentException.class,
        () -> BoardChooser.choose(List.of(pallet(92)), shelves(1), rules));
  }

  /** Gives one slat of 600: 1180 is less than 1203.2. */
  private static Board pallet(long width) {
    return EveryChoice.board(1200, width, 20, 10, 1190);
  }

  private static List<RowNeed> shelves(int count) {
    return IntStream.range(0, count)
        .mapToObj(shelf -> new RowNeed(shelf, 0, Length.mm(600)))
        .toList();
  }

  private static RowRules rules(long rail, long leastGap, long mostGap) {
    return new RowRules(
        Length.mm(rail),
        Length.mm(leastGap),
        Length.mm(mostGap),
        Length.mm(leastGap == mostGap ? 20 : mostGap),
        Optional.empty(),
        Length.mm(1),
        Length.mm(1),
        Length.roundedMm(3.2));
  }

  private static long filled(BoardChoice choice) {
    return choice.rows().stream().filter(Row::isFilled).count();
  }

  private static BoardChoice.Source source(BoardChoice choice, int row, int slat) {
    return choice.rows().get(row).slats().get(slat).source().orElseThrow();
  }

  private static List<Length> widths(Row row) {
    return row.slats().stream().map(Slat::width).toList();
  }

  private static List<Length> mm(long... millimetres) {
    return IntStream.range(0, millimetres.length).mapToObj(i -> Length.mm(millimetres[i])).toList();
  }
}
