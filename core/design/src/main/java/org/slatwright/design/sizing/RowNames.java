package org.slatwright.design.sizing;

import java.util.List;
import java.util.stream.Collectors;
import org.slatwright.design.boards.RowNeed;

/**
 * What a maker calls a row of slats.
 *
 * @param perBay whether a shelf has a row for each bay
 */
record RowNames(boolean perBay) {

  static RowNames of(List<RowNeed> all) {
    return new RowNames(all.stream().anyMatch(row -> row.run() > 0));
  }

  /** {@code shelf 1}, {@code shelves 1 and 3}, {@code shelf 1 bay 2 and shelf 2 bay 1}. */
  String words(List<RowNeed> rows) {
    if (perBay) {
      return and(
          rows.stream()
              .map(row -> "shelf " + (row.shelf() + 1) + " bay " + (row.run() + 1))
              .toList());
    }
    return (rows.size() == 1 ? "shelf " : "shelves ")
        + and(rows.stream().map(row -> "" + (row.shelf() + 1)).toList());
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String and(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : words.stream().limit(last).collect(Collectors.joining(", ")) + " and " + words.get(last);
  }
}
