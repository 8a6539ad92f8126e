package org.slatwright.design.templates.printing;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntBiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is said of the tiles of a draft.
 *
 * @param page which page a tile lies on, from 1, by its row and its column from 0
 */
record TileWords(TiledDraft tiled, ToIntBiFunction<Integer, Integer> page) {

  /** As long as a page number gets. */
  private static final int LONGEST = 888;

  /** Before the pages are known: the longest words that there can be. */
  static TileWords longest(TiledDraft tiled) {
    return new TileWords(tiled, (row, column) -> LONGEST);
  }

  /** The name of a draft in words: {@code U drilling}. */
  static String name(Draft draft) {
    return file(draft).replace('-', ' ');
  }

  /** The same as part of an id: {@code U-drilling}. */
  static String file(Draft draft) {
    return draft.name().substring(draft.name().lastIndexOf('/') + 1);
  }

  /** {@code U drilling, row 2 of 6}. */
  String name(int row, int column) {
    return Stream.of(
            name(tiled.draft()),
            of("row", row, tiled.grid().rows().size()),
            of("column", column, tiled.grid().columns().size()))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** How it goes together with its neighbours; nothing where it has none. */
  String joining(int row, int column) {
    List<Seam> before = seams(seam -> seam.isBefore(row, column));
    List<Seam> after = seams(seam -> seam.isAfter(row, column));
    String trim = before.size() > 1 ? "Trim at the dashed lines" : "Trim at the dashed line";
    return Stream.of(
            before.isEmpty()
                ? ""
                : trim
                    + " and lay it over "
                    + listed(before, seam -> at(seam.row(), seam.column(), seam))
                    + ".",
            after.isEmpty()
                ? ""
                : "Over it goes "
                    + listed(after, seam -> at(seam.laterRow(), seam.laterColumn(), seam))
                    + ".")
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(" "));
  }

  /** The same in short: {@code A: row 1, page 1; B: row 3, page 2}. */
  String neighbours(int row, int column) {
    return tiled.seams().stream()
        .filter(seam -> seam.isBefore(row, column) || seam.isAfter(row, column))
        .map(seam -> seam.letter() + ": " + neighbour(seam, seam.isAfter(row, column)))
        .collect(Collectors.joining("; "));
  }

  private String neighbour(Seam seam, boolean later) {
    int row = later ? seam.laterRow() : seam.row();
    int column = later ? seam.laterColumn() : seam.column();
    return place(row, column) + ", page " + page.applyAsInt(row, column);
  }

  private String at(int row, int column, Seam seam) {
    return place(row, column) + " (page " + page.applyAsInt(row, column) + ") at " + seam.letter();
  }

  private String place(int row, int column) {
    String inRow = "row " + (row + 1);
    String inColumn = "column " + (column + 1);
    if (tiled.grid().columns().size() == 1) {
      return inRow;
    }
    return tiled.grid().rows().size() == 1 ? inColumn : inRow + ", " + inColumn;
  }

  private List<Seam> seams(Predicate<Seam> which) {
    return tiled.seams().stream().filter(which).toList();
  }

  private static String listed(List<Seam> seams, Function<Seam, String> words) {
    return seams.stream().map(words).collect(Collectors.joining(" and "));
  }

  private static String of(String what, int index, int count) {
    return count == 1 ? "" : what + " " + (index + 1) + " of " + count;
  }
}
