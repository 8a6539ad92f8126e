package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;

/** A ruled table: a heading and rows of one line each. */
final class Table {

  private static final double LETTERING = 2.5;
  private static final double ROW = 5;
  private static final double PAD = 1.5;

  /**
   * A column.
   *
   * @param width in mm on paper
   * @param right whether its cells end at the right: numbers do
   */
  record Column(String heading, double width, boolean right) {}

  private final List<Column> columns;
  private final List<List<String>> rows;

  Table(List<Column> columns, List<List<String>> rows) {
    this.columns = List.copyOf(columns);
    this.rows = List.copyOf(rows);
  }

  double width() {
    return columns.stream().mapToDouble(Column::width).sum();
  }

  double height() {
    return ROW * (rows.size() + 1);
  }

  /** Drawn with its lower left corner there. */
  List<Figure> figures(double left, double bottom) {
    List<Figure> figures = new ArrayList<>();
    double top = bottom + height();
    for (int i = 0; i <= rows.size() + 1; i++) {
      double y = top - i * ROW;
      LineKind line = i <= 1 || i == rows.size() + 1 ? LineKind.VISIBLE : LineKind.THIN;
      figures.add(Strokes.line(left, y, left + width(), y, line));
    }
    double x = left;
    for (Column column : columns) {
      figures.add(Strokes.line(x, bottom, x, top, x == left ? LineKind.VISIBLE : LineKind.THIN));
      x += column.width();
    }
    figures.add(Strokes.line(x, bottom, x, top, LineKind.VISIBLE));
    figures.addAll(row(columns.stream().map(Column::heading).toList(), left, top));
    for (int i = 0; i < rows.size(); i++) {
      figures.addAll(row(rows.get(i), left, top - (i + 1) * ROW));
    }
    return figures;
  }

  private List<Figure> row(List<String> cells, double left, double top) {
    List<Figure> figures = new ArrayList<>();
    double baseline = top - (ROW + LETTERING) / 2;
    double x = left;
    for (int i = 0; i < cells.size(); i++) {
      Column column = columns.get(i);
      String text = Paragraph.cut(cells.get(i), LETTERING, column.width() - 2 * PAD);
      if (!text.isEmpty()) {
        figures.add(
            column.right()
                ? Paragraph.text(
                    x + column.width() - PAD, baseline, LETTERING, text, Figure.Align.END)
                : Paragraph.text(x + PAD, baseline, LETTERING, text, Figure.Align.START));
      }
      x += column.width();
    }
    return figures;
  }
}
