package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.slatwright.design.boards.RowNeed;

/**
 * What a maker calls rows of slats.
 *
 * @param runs how many rows a shelf has: one, or one for each bay
 */
record RowNames(int runs) {

  static RowNames of(List<RowNeed> all) {
    return new RowNames(all.stream().mapToInt(RowNeed::run).max().orElse(0) + 1);
  }

  /** {@code shelf 1}, {@code shelves 1 and 3}, {@code shelf 1 and shelf 2 bay 1}. */
  String words(List<RowNeed> rows) {
    Map<Integer, List<RowNeed>> shelves = new TreeMap<>();
    rows.forEach(row -> shelves.computeIfAbsent(row.shelf(), s -> new ArrayList<>()).add(row));
    List<String> whole = new ArrayList<>();
    List<String> parts = new ArrayList<>();
    shelves.forEach(
        (shelf, of) -> {
          if (of.size() == runs) {
            whole.add("" + (shelf + 1));
          } else {
            of.forEach(row -> parts.add("shelf " + (shelf + 1) + " bay " + (row.run() + 1)));
          }
        });
    if (!whole.isEmpty()) {
      parts.add(0, (whole.size() == 1 ? "shelf " : "shelves ") + and(whole));
    }
    return parts.size() == 2 && whole.size() > 1
        ? parts.get(0) + ", and " + parts.get(1)
        : and(parts);
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String and(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : words.stream().limit(last).collect(Collectors.joining(", ")) + " and " + words.get(last);
  }
}
