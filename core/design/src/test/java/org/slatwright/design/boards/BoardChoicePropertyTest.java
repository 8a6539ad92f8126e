package org.slatwright.design.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.BoardChoice.Missing;
import org.slatwright.design.boards.BoardChoice.Row;
import org.slatwright.design.boards.BoardChoice.Slat;
import org.slatwright.design.boards.BoardChoice.Source;

/** What holds for every choice, whatever the boards. */
class BoardChoicePropertyTest {

  /** What is asked for. */
  record Job(List<Board> boards, List<RowNeed> needs, RowRules rules) {
    BoardChoice choice() {
      return BoardChooser.choose(boards, needs, rules);
    }

    Job with(List<Board> others) {
      return new Job(others, needs, rules);
    }
  }

  @Property(tries = 500)
  void aSmallChoiceIsAsGoodAsTheBestOfAll(@ForAll("small") Job job) {
    isAsGoodAsTheBestOfAll(job);
  }

  /** Where what is shared out is mostly which slats lie together. */
  @Property(tries = 200)
  void slatsThatShareAShelfLeaveTheBestGapsOfAll(@ForAll("oneSlatEach") Job job) {
    isAsGoodAsTheBestOfAll(job);
  }

  private static void isAsGoodAsTheBestOfAll(Job job) {
    EveryChoice.Merit best = EveryChoice.best(job.boards(), job.needs(), job.rules());
    BoardChoice choice = job.choice();
    EveryChoice.Merit made = EveryChoice.of(choice, job.boards(), job.rules());
    assertTrue(choice.proved());
    assertEquals(best.filled(), made.filled());
    assertEquals(best.fromTheFloorUp(), made.fromTheFloorUp());
    assertEquals(best.ripped(), made.ripped());
    if (!helpsRowsThatAreNotFilled(choice)) {
      assertEquals(best, made);
    }
  }

  private static boolean helpsRowsThatAreNotFilled(BoardChoice choice) {
    return choice.rows().stream()
        .filter(row -> !row.isFilled())
        .flatMap(row -> row.slats().stream())
        .anyMatch(slat -> slat.source().isPresent());
  }

  @Property(tries = 200)
  void everyRowClosesToTheNanometre(@ForAll("any") Job job) {
    for (Row row : job.choice().rows()) {
      Length sum = row.frontMargin().plus(row.backMargin());
      for (Slat slat : row.slats()) {
        assertEquals(row.need().length(), slat.length());
        assertTrue(slat.width().isPositive());
        sum = sum.plus(slat.width());
      }
      assertEquals(job.rules().rail(), sum.plus(row.gap().times(row.slats().size() - 1L)));
    }
  }

  @Property(tries = 200)
  void openingsAndThicknessKeepToTheRules(@ForAll("any") Job job) {
    RowRules rules = job.rules();
    for (Row row : job.choice().rows()) {
      if (row.slats().size() > 1) {
        assertTrue(!row.gap().isLessThan(rules.leastGap()), row::toString);
        assertTrue(!row.gap().isMoreThan(rules.mostGap()), row::toString);
      }
      assertTrue(!row.frontMargin().isNegative());
      assertTrue(!row.backMargin().isMoreThan(rules.mostMargin()));
      assertTrue(!row.frontMargin().isMoreThan(row.backMargin()));
      List<Length> thick = row.slats().stream().map(Slat::thickness).toList();
      assertTrue(
          !Collections.max(thick).minus(Collections.min(thick)).isMoreThan(rules.thicknessStep()));
      rules.count().ifPresent(count -> assertEquals(count, row.slats().size()));
    }
  }

  /** All of them at either end of what is told: Σ widths leave allowed gaps and margins. */
  @Property(tries = 200)
  void missingSlatsCloseTheirRowWhereverInTheirRangeTheyAre(@ForAll("any") Job job) {
    RowRules rules = job.rules();
    for (Row row : job.choice().rows()) {
      row.missing().ifPresent(missing -> closesWithAny(row, missing, rules));
    }
  }

  private static void closesWithAny(Row row, Missing missing, RowRules rules) {
    List<Slat> there = row.slats().stream().filter(s -> s.source().isPresent()).toList();
    long lacking = row.slats().size() - there.size();
    Length width = there.stream().map(Slat::width).reduce(Length.ZERO, Length::plus);
    Length least = width.plus(missing.narrowest().times(lacking));
    Length most = width.plus(missing.widest().times(lacking));
    long gaps = row.slats().size() - 1L;
    assertTrue(!rules.rail().minus(most).isLessThan(rules.leastGap().times(gaps)));
    assertTrue(
        !rules
            .rail()
            .minus(least)
            .isMoreThan(rules.mostGap().times(gaps).plus(rules.mostMargin().times(2))));
    assertTrue(!missing.thickest().minus(missing.thinnest()).isMoreThan(rules.thicknessStep()));
    for (Slat slat : row.slats()) {
      assertTrue(!slat.thickness().isLessThan(missing.thinnest()));
      assertTrue(!slat.thickness().isMoreThan(missing.thickest()));
      assertTrue(
          slat.source().isPresent()
              || (!slat.width().isLessThan(missing.narrowest())
                  && !slat.width().isMoreThan(missing.widest())));
    }
  }

  @Property(tries = 200)
  void theWidestSlatsLieAtTheFront(@ForAll("any") Job job) {
    for (Row row : job.choice().rows()) {
      for (int i = 1; i < row.slats().size(); i++) {
        assertTrue(!row.slats().get(i).width().isMoreThan(row.slats().get(i - 1).width()));
      }
    }
  }

  @Property(tries = 200)
  void everySlatIsCutFromClearWoodWithAKerfBetweenTwo(@ForAll("any") Job job) {
    List<Slat> cut =
        job.choice().rows().stream()
            .flatMap(row -> row.slats().stream())
            .filter(slat -> slat.source().isPresent())
            .toList();
    for (Slat slat : cut) {
      Source source = slat.source().orElseThrow();
      Board board = job.boards().get(source.board());
      Length end = source.from().plus(slat.length());
      assertTrue(
          board.clear().stream()
              .anyMatch(s -> !source.from().isLessThan(s.from()) && !end.isMoreThan(s.to())));
      assertEquals(board.thickness(), slat.thickness());
      assertEquals(source.ripped(), slat.width().isLessThan(board.width()));
      assertTrue(!source.across().isNegative());
      assertTrue(!source.across().plus(slat.width()).isMoreThan(board.width()));
    }
    for (int i = 0; i < cut.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertTrue(apart(cut.get(i), cut.get(j), job.rules().kerf()), cut::toString);
      }
    }
  }

  private static boolean apart(Slat one, Slat other, Length kerf) {
    Source a = one.source().orElseThrow();
    Source b = other.source().orElseThrow();
    return a.board() != b.board()
        || isPast(a.from().plus(one.length()), b.from(), kerf)
        || isPast(b.from().plus(other.length()), a.from(), kerf)
        || isPast(a.across().plus(one.width()), b.across(), kerf)
        || isPast(b.across().plus(other.width()), a.across(), kerf);
  }

  private static boolean isPast(Length end, Length from, Length kerf) {
    return !from.isLessThan(end.plus(kerf));
  }

  @Property(tries = 100)
  void lowerShelvesAreFilledFirst(@ForAll("any") Job job) {
    List<Row> rows = job.choice().rows();
    for (int i = 0; i < rows.size(); i++) {
      assertEquals(job.needs().get(i), rows.get(i).need());
      for (int lower = 0; lower < i; lower++) {
        boolean alike = rows.get(lower).need().length().equals(rows.get(i).need().length());
        assertTrue(!alike || !rows.get(i).isFilled() || rows.get(lower).isFilled());
      }
    }
  }

  @Property(tries = 100)
  void theSameBoardsGiveTheSameChoice(@ForAll("any") Job job) {
    assertEquals(job.choice(), job.choice());
  }

  @Property(tries = 100)
  void theOrderOfTheBoardsMakesNoChoiceBetter(@ForAll("any") Job job) {
    List<Board> turned = new ArrayList<>(job.boards());
    Collections.reverse(turned);
    Job other = job.with(turned);
    assertEquals(
        EveryChoice.of(job.choice(), job.boards(), job.rules()),
        EveryChoice.of(other.choice(), turned, job.rules()));
  }

  @Property(tries = 100)
  void oneMoreBoardNeverFillsFewerRows(@ForAll("small") Job job) {
    List<Board> fewer = job.boards().subList(1, job.boards().size());
    if (!fewer.isEmpty()) {
      assertTrue(filled(job.with(fewer).choice()) <= filled(job.choice()));
    }
  }

  private static long filled(BoardChoice choice) {
    return choice.rows().stream().filter(Row::isFilled).count();
  }

  @Provide
  Arbitrary<Job> small() {
    return jobs(1, 4, 2, 2);
  }

  @Provide
  Arbitrary<Job> any() {
    return Arbitraries.frequencyOf(
        Tuple.of(14, jobs(1, 12, 4, 5)), Tuple.of(1, eachItsOwn(15, 30, 4)));
  }

  /** Boards that give one slat each, too narrow for two strips. */
  @Provide
  Arbitrary<Job> oneSlatEach() {
    return Combinators.combine(
            Combinators.combine(Arbitraries.of(44, 51, 58, 66, 75), Arbitraries.of(18, 19))
                .as((width, thickness) -> board(width, thickness, 0, 640, 1))
                .list()
                .ofMinSize(4)
                .ofMaxSize(6),
            Arbitraries.integers().between(90, 180))
        .as((boards, rail) -> new Job(boards, shelves(2), rules(rail)));
  }

  /** More boards, each measured for itself, than there is time to try. */
  private static Arbitrary<Job> eachItsOwn(int fewest, int most, int rows) {
    return Combinators.combine(
            Combinators.combine(
                    Arbitraries.integers().between(60, 150),
                    Arbitraries.integers().between(17, 23),
                    Arbitraries.integers().between(640, 1400))
                .as((width, thickness, length) -> board(width, thickness, 10, length, 1))
                .list()
                .ofMinSize(fewest)
                .ofMaxSize(most),
            Arbitraries.integers().between(300, 700))
        .as((boards, rail) -> new Job(boards, shelves(rows), rules(rail)));
  }

  private static List<RowNeed> shelves(int count) {
    return IntStream.range(0, count).mapToObj(i -> new RowNeed(i, 0, Length.mm(600))).toList();
  }

  private static RowRules rules(int rail) {
    return new RowRules(
        Length.mm(rail),
        Length.mm(3),
        Length.mm(20),
        Length.mm(20),
        Optional.empty(),
        Length.mm(2),
        Length.mm(1),
        Length.mm(3));
  }

  /** Rows of 600 and, where there are two lengths, of 400. */
  private static Arbitrary<Job> jobs(int fewest, int most, int rows, int lengthsOfBoards) {
    Arbitrary<Board> board =
        Combinators.combine(
                Arbitraries.of(30, 70, 92, 118, 150, 200),
                Arbitraries.of(18, 19, 22),
                Arbitraries.of(0, 10),
                Arbitraries.of(430, 640, 830, 1010, 1250, 1820)
                    .filter(l -> l < 500 * lengthsOfBoards),
                Arbitraries.integers().between(0, 3))
            .as(BoardChoicePropertyTest::board);
    Arbitrary<RowRules> rules =
        Combinators.combine(
                Arbitraries.integers().between(60, 420),
                Arbitraries.of(List.of(3, 20), List.of(5, 12), List.of(10, 10), List.of(0, 6)),
                Arbitraries.of(0, 0, 0, 1, 2, 3),
                Arbitraries.of(0, 1, 3),
                Arbitraries.of(1, 5))
            .as(
                (rail, gaps, count, step, increment) ->
                    new RowRules(
                        Length.mm(rail),
                        Length.mm(gaps.get(0)),
                        Length.mm(gaps.get(1)),
                        Length.mm(gaps.get(0).equals(gaps.get(1)) ? 20 : gaps.get(1)),
                        Optional.of(count).filter(n -> n > 0),
                        Length.mm(step),
                        Length.mm(increment),
                        Length.mm(3)));
    Arbitrary<List<RowNeed>> needs =
        Combinators.combine(
                Arbitraries.integers().between(1, rows), Arbitraries.of(false, false, true))
            .as(
                (count, mixed) ->
                    IntStream.range(0, count)
                        .mapToObj(
                            i ->
                                new RowNeed(
                                    mixed ? i / 2 : i,
                                    mixed ? i % 2 : 0,
                                    Length.mm(mixed && i % 2 == 1 ? 400 : 600)))
                        .toList());
    return Combinators.combine(board.list().ofMinSize(fewest).ofMaxSize(most), needs, rules)
        .as(Job::new);
  }

  private static Board board(int width, int thickness, int trim, int length, int split) {
    int end = length - trim;
    return split == 0 && length > 700
        ? EveryChoice.board(length, width, thickness, trim, 620 + trim, 650 + trim, end)
        : EveryChoice.board(length, width, thickness, trim, end);
  }
}
