package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table with a caption, column heads, and a head in each row. Where the screen is too narrow it
 * scrolls by itself, and the page does not.
 *
 * @param caption what it tells
 * @param columns from the left
 * @param rowHead which column names the row, from 0
 * @param rows each with a node for every column, and perhaps one more to stand below them, over the
 *     width of all columns but the first
 */
record HtmlTable(String caption, List<Column> columns, int rowHead, List<List<Node>> rows) {

  HtmlTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A column.
   *
   * @param head what its head says
   * @param styleClass for the style sheet, or empty
   */
  record Column(List<Node> head, String styleClass) {

    /** Of words. */
    static Column words(String head) {
      return new Column(List.of(Node.text(head)), "");
    }

    /** Of numbers that are no lengths. */
    static Column numbers(String head) {
      return new Column(List.of(Node.text(head)), "number");
    }

    /** Of lengths: the head names their unit. */
    static Column lengths(String head) {
      return new Column(List.of(Node.text(head + ", "), Measures.unit()), "number");
    }

    /** Of words with lengths in them. */
    static Column wordsIn(String head) {
      return new Column(lengths(head).head(), "");
    }

    /** Of boxes to tick. */
    static Column ticks() {
      return new Column(List.of(Element.of("span", "Done").styled("unseen")), "ticks");
    }

    private Element cell(String name, List<? extends Node> content) {
      Element cell = Element.of(name, content);
      return styleClass.isEmpty() ? cell : cell.styled(styleClass);
    }
  }

  /** As an element. */
  Node node() {
    List<Element> heads =
        columns.stream()
            .map(column -> column.cell("th", column.head()).with("scope", "col"))
            .toList();
    Element table =
        Element.of(
            "table",
            Element.of("caption", caption),
            Element.of("thead", Element.of("tr", heads)),
            Element.of("tbody", rows.stream().flatMap(this::rows).toList()));
    return Element.of("div", table).styled("scrolls");
  }

  private Stream<Element> rows(List<Node> row) {
    return row.size() == columns.size()
        ? Stream.of(row(row))
        : Stream.of(row(row), below(row.get(columns.size())));
  }

  private Element below(Node detail) {
    Element wide = Element.of("td", detail).with("colspan", "" + (columns.size() - 1));
    return Element.of("tr", Element.of("td"), wide).styled("below");
  }

  private Element row(List<Node> row) {
    List<Node> cells = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      List<Node> content = List.of(row.get(i));
      cells.add(
          i == rowHead
              ? columns.get(i).cell("th", content).with("scope", "row")
              : columns.get(i).cell("td", content));
    }
    return Element.of("tr", cells);
  }
}
