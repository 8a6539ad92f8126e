package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;

/** A ruled table: a heading and rows, each as high as its fullest cell. */
final class Table {

  private static final double LETTERING = 2.5;
  private static final double ROW = 5;
  private static final double PAD = 1.5;

  /**
   * A column.
   *
   * @param width in mm on paper
   * @param right whether its cells end at the right: numbers do
   * @param lines that a cell may have; what is longer is cut short
   */
  record Column(String heading, double width, boolean right, int lines) {

    /** For {@code lines}: nothing is cut short. */
    static final int ALL = Integer.MAX_VALUE;

    /** With cells of one line. */
    Column(String heading, double width, boolean right) {
      this(heading, width, right, 1);
    }

    List<String> wrap(String cell) {
      return Paragraph.wrap(cell, LETTERING, width - 2 * PAD, lines);
    }
  }

  private final List<Column> columns;
  private final List<List<String>> rows;

  Table(List<Column> columns, List<List<String>> rows) {
    this.columns = List.copyOf(columns);
    this.rows = List.copyOf(rows);
  }

  /** Rows with a cell of more lines than that go on in rows of their own below. */
  static List<List<String>> parted(List<Column> columns, List<List<String>> rows, int lines) {
    List<List<String>> parted = new ArrayList<>();
    for (List<String> row : rows) {
      List<List<String>> cells = new ArrayList<>();
      for (int i = 0; i < row.size(); i++) {
        cells.add(columns.get(i).wrap(row.get(i)));
      }
      int most = cells.stream().mapToInt(List::size).max().orElse(0);
      for (int from = 0; from < most; from += lines) {
        int first = from;
        parted.add(cells.stream().map(cell -> part(cell, first, lines)).toList());
      }
    }
    return parted;
  }

  private static String part(List<String> cell, int from, int lines) {
    int to = Math.min(cell.size(), from + lines);
    return from < to ? String.join(" ", cell.subList(from, to)) : "";
  }

  double width() {
    return columns.stream().mapToDouble(Column::width).sum();
  }

  double height() {
    return ROW + rows.stream().mapToDouble(this::heightOf).sum();
  }

  /** Drawn with its lower left corner there. */
  List<Figure> figures(double left, double bottom) {
    double top = bottom + height();
    double y = top - ROW;
    List<Figure> figures = new ArrayList<>();
    figures.add(level(left, top, LineKind.VISIBLE));
    figures.add(level(left, y, LineKind.VISIBLE));
    figures.addAll(row(columns.stream().map(Column::heading).toList(), left, top));
    for (int i = 0; i < rows.size(); i++) {
      figures.addAll(row(rows.get(i), left, y));
      y -= heightOf(rows.get(i));
      figures.add(level(left, y, i == rows.size() - 1 ? LineKind.VISIBLE : LineKind.THIN));
    }
    figures.addAll(sides(left, bottom, top));
    return figures;
  }

  private Figure level(double left, double y, LineKind line) {
    return Strokes.line(left, y, left + width(), y, line);
  }

  private List<Figure> sides(double left, double bottom, double top) {
    List<Figure> figures = new ArrayList<>();
    double x = left;
    for (Column column : columns) {
      figures.add(Strokes.line(x, bottom, x, top, x == left ? LineKind.VISIBLE : LineKind.THIN));
      x += column.width();
    }
    figures.add(Strokes.line(x, bottom, x, top, LineKind.VISIBLE));
    return figures;
  }

  private double heightOf(List<String> cells) {
    int lines = 1;
    for (int i = 0; i < cells.size(); i++) {
      lines = Math.max(lines, columns.get(i).wrap(cells.get(i)).size());
    }
    return ROW + (lines - 1) * LETTERING * Paragraph.LINE_SPACING;
  }

  private List<Figure> row(List<String> cells, double left, double top) {
    List<Figure> figures = new ArrayList<>();
    double x = left;
    for (int i = 0; i < cells.size(); i++) {
      figures.addAll(cell(columns.get(i), cells.get(i), x, top - (ROW - LETTERING) / 2));
      x += columns.get(i).width();
    }
    return figures;
  }

  private static List<Figure> cell(Column column, String text, double left, double top) {
    if (text.isEmpty()) {
      return List.of();
    }
    List<String> lines = column.wrap(text);
    return column.right()
        ? Paragraph.draw(lines, left + column.width() - PAD, top, LETTERING, Figure.Align.END)
        : Paragraph.draw(lines, left + PAD, top, LETTERING, Figure.Align.START);
  }
}
