package org.slatwright.exporter.csv;

/** One cell of a table: text that may come from the maker, or a number that was computed. */
sealed interface Cell {

  /** What stands in it. */
  String content();

  /** Words; any text at all. */
  record Text(String content) implements Cell {}

  /** A number as it is to be read, such as {@code 37.6} or {@code 4 3/8}. */
  record Number(String content) implements Cell {}
}
