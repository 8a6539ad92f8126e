package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/** Paragraphs under a heading, set in columns of a comfortable width. */
final class Columns implements TextBlock {

  private static final double HEADING = 3.5;
  private static final double LETTERING = 2.5;
  private static final double BETWEEN = 1.4;
  private static final double GUTTER = 6;
  private static final double LEAST_COLUMN = 80;

  private final String heading;
  private final double columnWidth;
  private final List<List<List<String>>> columns;

  /** To fill {@code width} mm on paper, one column or more. */
  Columns(String heading, List<String> paragraphs, double width) {
    this.heading = heading;
    int count = Math.max(1, (int) ((width + GUTTER) / (LEAST_COLUMN + GUTTER)));
    this.columnWidth = (width - (count - 1) * GUTTER) / count;
    List<List<String>> wrapped =
        paragraphs.stream().map(text -> Paragraph.wrap(text, LETTERING, columnWidth)).toList();
    this.columns = share(wrapped, count);
  }

  @Override
  public double height() {
    return HEADING * Paragraph.LINE_SPACING
        + columns.stream().mapToDouble(Columns::heightOfColumn).max().orElse(0);
  }

  @Override
  public List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Paragraph.text(left, top - HEADING, HEADING, heading, Figure.Align.START));
    for (int i = 0; i < columns.size(); i++) {
      double y = top - HEADING * Paragraph.LINE_SPACING;
      for (List<String> lines : columns.get(i)) {
        figures.addAll(Paragraph.draw(lines, left + i * (columnWidth + GUTTER), y, LETTERING));
        y -= heightOf(lines);
      }
    }
    return figures;
  }

  /** Filled one after the other, each up to its share of the whole height; none is left out. */
  private static List<List<List<String>>> share(List<List<String>> paragraphs, int count) {
    double all = paragraphs.stream().mapToDouble(Columns::heightOf).sum();
    List<List<List<String>>> columns = new ArrayList<>();
    double before = 0;
    for (List<String> paragraph : paragraphs) {
      int due = Math.min(count - 1, (int) ((before + heightOf(paragraph) / 2) / all * count));
      int column = Math.min(due, columns.size());
      if (column == columns.size()) {
        columns.add(new ArrayList<>());
      }
      columns.get(column).add(paragraph);
      before += heightOf(paragraph);
    }
    return columns;
  }

  private static double heightOfColumn(List<List<String>> column) {
    return column.stream().mapToDouble(Columns::heightOf).sum();
  }

  private static double heightOf(List<String> lines) {
    return Paragraph.heightOf(lines.size(), LETTERING) + BETWEEN;
  }
}
