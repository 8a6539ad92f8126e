package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;

/** Chooses slats from reclaimed boards. */
public final class BoardChooser {

  private BoardChooser() {}

  /**
   * As many rows as the boards fill, the lower ones first; among such choices the one that rips
   * fewest slats; among those the one that wastes least, since any gap within the range is one that
   * the maker will have; among those the one whose gaps are nearest the middle of the range, by the
   * sum of squares, which also makes shelves alike; among those the one whose rows are most even in
   * thickness, ripped slats aside. Rows that they do not fill are closed with slats that are still
   * to be found. The same boards give the same choice.
   *
   * <p>Rows of one length are alike, so that the lower shelves get those that are filled. Where
   * rows are of several lengths, the choice among as many rows is the one with most rows filled
   * from the floor up before the first that is not.
   *
   * <p>Waste is the area of all boards that are cut into, less the pieces that become slats, less
   * the rests of clear stretches that are as long as the shortest slat. What is left beside a
   * ripped slat is not counted: it is as long as a slat, and how wide it is depends on the gap.
   *
   * <p>A gap here is all that a row leaves free, shared over its gaps, margins included; what a
   * single slat leaves should be nothing. Ripped slats count as if they could be as wide as suits
   * the gap best.
   *
   * <p>What the filled rows leave helps the others, the lowest first, each with as few slats still
   * to be found as can be. Those are all of one width in a row.
   *
   * <p>Few rows from few kinds of boards are chosen as well as can be; where there are too many
   * ways to look at them all, it is the best of those looked at, always the same ones, and the
   * choice says that it is not proved.
   *
   * @param boards at least one
   * @param needs of rows, in any order
   * @throws IllegalArgumentException when no slats at all, however wide, close such a row
   */
  public static BoardChoice choose(List<Board> boards, List<RowNeed> needs, RowRules rules) {
    Stock stock = Stock.of(boards, needs, rules);
    List<RowNeed> lowestFirst =
        needs.stream()
            .sorted(Comparator.comparing(RowNeed::shelf).thenComparing(RowNeed::run))
            .toList();
    List<Integer> lengths =
        lowestFirst.stream().map(need -> stock.lengths().indexOf(need.length())).toList();
    Filling filling = new Filling(stock, lengths);
    List<Draft.Row> filled = new ArrayList<>(filling.rows());
    MissingSlats missing = new MissingSlats(stock);
    Draft draft = new Draft(stock);
    filled.forEach(draft::fill);
    List<Draft.Row> rows = new ArrayList<>();
    for (int length : lengths) {
      rows.add(next(filled, length, missing, draft));
    }
    Layout layout = new Layout(stock, draft, boards);
    List<BoardChoice.Row> laid =
        IntStream.range(0, rows.size())
            .mapToObj(i -> layout.row(lowestFirst.get(i), rows.get(i)))
            .toList();
    return new BoardChoice(
        needs.stream().map(need -> laid.get(lowestFirst.indexOf(need))).toList(),
        filling.isProved() && missing.isProved());
  }

  /**
   * How many slats a row may have, whatever the maker says of their number: each that closes a row
   * with slats no wider than the widest board, and no narrower than the narrowest or than boards
   * are ripped to. In rising order; empty when none does.
   *
   * @param boards at least one
   */
  public static List<Integer> counts(List<Board> boards, RowRules rules) {
    RowFit fit = new RowFit(rules);
    Length widest = boards.stream().map(Board::width).reduce(Length.ZERO, Length::max);
    Length narrowest = narrowest(boards);
    return IntStream.iterate(1, n -> n * narrowest.nanometres() <= fit.most(n), n -> n + 1)
        .filter(n -> n * widest.nanometres() >= fit.least(n))
        .boxed()
        .toList();
  }

  /** The narrowest that a slat of these boards can be: that of a board, or else ripped. */
  public static Length narrowest(List<Board> boards) {
    return boards.stream().map(Board::width).reduce(Rips.LEAST_WIDTH, Length::min);
  }

  private static Draft.Row next(
      List<Draft.Row> filled, int length, MissingSlats missing, Draft draft) {
    for (Draft.Row row : filled) {
      if (row.length() == length) {
        filled.remove(row);
        return row;
      }
    }
    Draft.Row closed = missing.close(draft, length);
    draft.fill(closed);
    return closed;
  }
}
