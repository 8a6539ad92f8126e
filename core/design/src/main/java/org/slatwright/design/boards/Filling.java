package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which rows the boards fill, and how. First row by row, each as well as what is left allows; then
 * all together, to fill one row more as long as that can be found, or else as many rows with fewer
 * slats ripped and less waste. Where there are too many ways to try them all, {@link Exchange}
 * makes the best of them better.
 */
final class Filling {

  /** Sets of pieces that are looked at to close one row. */
  private static final int PATTERNS = 4_000;

  /** Steps of one search over all rows; a few of them take a microsecond. */
  private static final long STEPS = 200_000;

  /** Steps to fill one row, when the rows are filled one by one. */
  private static final long ROW_STEPS = 5_000;

  private final Stock stock;
  private final List<Integer> asked;
  private boolean proved = true;

  /**
   * @param asked the length of each row, by index, the lowest shelf first
   */
  Filling(Stock stock, List<Integer> asked) {
    this.stock = stock;
    this.asked = asked;
  }

  /** The rows that are filled. */
  List<Draft.Row> rows() {
    List<Draft.Row> best = together();
    return proved ? best : Exchange.improve(stock, asked, best);
  }

  /** Whether everything was looked at that could be better than those rows. */
  boolean isProved() {
    return proved;
  }

  private List<Draft.Row> together() {
    List<Draft.Row> best = rowByRow();
    proved = true;
    for (int more = best.size() + 1; more <= asked.size(); more++) {
      Optional<List<Draft.Row>> found = together(more, more * stock.mostSlats());
      if (found.isEmpty()) {
        break;
      }
      best = found.get();
    }
    return together(best.size(), rips(best)).orElse(best);
  }

  private static int rips(List<Draft.Row> rows) {
    return rows.stream().mapToInt(row -> row.pattern().strips()).sum();
  }

  private List<Draft.Row> rowByRow() {
    Draft draft = new Draft(stock);
    List<Draft.Row> filled = new ArrayList<>();
    boolean[] failed = new boolean[stock.lengths().size()];
    for (int length : asked) {
      if (!failed[length]) {
        Optional<Draft.Row> row = one(draft, length);
        row.ifPresent(draft::fill);
        row.ifPresent(filled::add);
        failed[length] = row.isEmpty();
      }
    }
    return filled;
  }

  private Optional<Draft.Row> one(Draft draft, int length) {
    int[] rows = {length};
    return found(draft, rows, 0, ROW_STEPS)
        .or(() -> found(draft, rows, stock.mostSlats(), ROW_STEPS))
        .map(rowsFound -> rowsFound.get(0));
  }

  /** So many rows, with as few rips as can be found. */
  private Optional<List<Draft.Row>> together(int count, int mostRips) {
    for (int[] rows : sharesOf(count)) {
      Draft draft = new Draft(stock);
      Optional<List<Draft.Row>> found =
          found(draft, rows, 0, STEPS).or(() -> found(draft, rows, mostRips, STEPS));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Optional<List<Draft.Row>> found(Draft draft, int[] rows, int mostRips, long steps) {
    int mostStrips = Math.min(mostRips, stock.mostSlats());
    RowPatterns.Strips strips =
        new RowPatterns.Strips(mostStrips, Rips.LEAST_WIDTH.nanometres(), stock.widest() - 1);
    List<RowPatterns> ways =
        IntStream.range(0, stock.lengths().size())
            .mapToObj(length -> RowPatterns.of(stock, draft.available(length), strips, PATTERNS))
            .toList();
    Search search =
        new Search(stock, draft, rows, ways.stream().map(RowPatterns::found).toList(), steps);
    Optional<Search.Found> found = Optional.empty();
    for (int rips = Math.min(1, mostRips);
        rips <= mostRips && found.isEmpty() && !search.isCutShort();
        rips++) {
      found = search.withRips(rips);
    }
    proved &= !search.isCutShort() && ways.stream().noneMatch(RowPatterns::isCutShort);
    return found.map(Search.Found::rows);
  }

  /**
   * How many rows of each length so many can be, those first that fill most whole shelves: each as
   * the length of every row, equal ones together.
   */
  private List<int[]> sharesOf(int count) {
    List<int[]> shares = new ArrayList<>();
    share(new int[stock.lengths().size()], 0, count, shares);
    return shares.stream()
        .sorted(Comparator.comparing((int[] share) -> -rowsBeforeTheFirstGap(share)))
        .map(
            share ->
                IntStream.range(0, share.length)
                    .flatMap(length -> IntStream.generate(() -> length).limit(share[length]))
                    .toArray())
        .toList();
  }

  private void share(int[] share, int length, int left, List<int[]> into) {
    if (length == share.length) {
      if (left == 0) {
        into.add(share.clone());
      }
      return;
    }
    int most = (int) asked.stream().filter(each -> each == length).count();
    for (int n = 0; n <= Math.min(most, left); n++) {
      share[length] = n;
      share(share, length + 1, left - n, into);
    }
    share[length] = 0;
  }

  /** From the lowest shelf up, how many rows are filled before the first that is not. */
  private int rowsBeforeTheFirstGap(int[] share) {
    int[] left = Arrays.copyOf(share, share.length);
    int row = 0;
    while (row < asked.size() && left[asked.get(row)]-- > 0) {
      row++;
    }
    return row;
  }
}
