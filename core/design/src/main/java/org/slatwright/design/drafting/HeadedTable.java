package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/** A table under a heading of its own. */
record HeadedTable(String heading, Table table) implements TextBlock {

  private static final double HEADING = 3.5;
  private static final double ABOVE_TABLE = HEADING * 0.35;

  /** Lines of a row, which has to fit on a sheet. */
  private static final int LINES = 12;

  /** That may go on from sheet to sheet. */
  static RunningText<List<String>> running(
      String id, String heading, List<List<String>> rows, List<Table.Column> columns) {
    return new RunningText<>(
        id,
        heading,
        Table.parted(columns, rows, LINES),
        (head, some) -> new HeadedTable(head, new Table(columns, some)));
  }

  @Override
  public double height() {
    return headingHeight() + table.height();
  }

  @Override
  public List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.addAll(Paragraph.draw(lines(), left, top, HEADING));
    figures.addAll(table.figures(left, top - height()));
    return figures;
  }

  private List<String> lines() {
    return Paragraph.wrap(heading, HEADING, table.width());
  }

  private double headingHeight() {
    return Paragraph.heightOf(lines().size(), HEADING) + ABOVE_TABLE;
  }
}
