package org.slatwright.cli.sizes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.slatwright.design.rackfile.NearestKey;

/**
 * The first row of a table: which key of the rack file each column sets.
 *
 * @param named whether there is a column of names before the keys
 * @param keys of the columns, in their order
 */
record Header(boolean named, List<String> keys) {

  private static final String NAME = "name";

  Header {
    keys = List.copyOf(keys);
  }

  /**
   * What the cells of the first row say.
   *
   * @param line of the table where it stands, from 1
   * @param known every key that there is, entries of lists as {@code []}
   */
  static Header of(List<String> cells, long line, SortedSet<String> known) throws TableException {
    List<String> titles = withoutEmptyEnd(cells.stream().map(String::strip).toList());
    boolean named = !titles.isEmpty() && titles.get(0).equals(NAME);
    List<String> keys = titles.subList(named ? 1 : 0, titles.size());
    List<String> faults = faults(keys, named, known);
    if (!faults.isEmpty()) {
      throw new TableException(line, faults);
    }
    return new Header(named, keys);
  }

  /** How many columns there are. */
  int width() {
    return keys.size() + (named ? 1 : 0);
  }

  private static List<String> faults(List<String> keys, boolean named, SortedSet<String> known) {
    if (keys.isEmpty()) {
      return List.of("the first row names no key of the rack file, such as rack.upright");
    }
    int first = named ? 2 : 1;
    Set<String> seen = new HashSet<>(named ? Set.of(NAME) : Set.of());
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      String key = keys.get(i);
      if (key.isEmpty()) {
        faults.add("column " + (first + i) + " has no key in the first row");
      } else if (!seen.add(key)) {
        faults.add("the column " + key + " stands twice in the first row");
      } else if (key.equals(NAME)) {
        faults.add("the column " + NAME + " must be the first");
      } else if (!known.contains(key.replaceAll("\\[\\d{1,5}]", "[]"))) {
        faults.add("there is no key " + key + hint(key, known));
      }
    }
    return faults;
  }

  private static String hint(String key, SortedSet<String> known) {
    SortedSet<String> all = new TreeSet<>(known);
    all.add(NAME);
    return NearestKey.to(key.replaceAll("\\[\\d+]", "[]"), all)
        .map(near -> "; did you mean " + near.replace("[]", "[0]") + "?")
        .orElse("; 'slatwright schema' prints all of them");
  }

  /** Spreadsheets often write columns that are empty from top to bottom. */
  private static List<String> withoutEmptyEnd(List<String> titles) {
    int last =
        IntStream.range(0, titles.size()).filter(i -> !titles.get(i).isEmpty()).max().orElse(-1);
    return titles.subList(0, last + 1);
  }
}
