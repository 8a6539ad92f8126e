package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/**
 * Steps under a heading, in rows: as many side by side as are comfortable to read.
 *
 * @param rows each of steps side by side
 */
record StepRows(String heading, List<List<StepText>> rows) implements TextBlock {

  private static final double HEADING = 3.5;
  private static final double BETWEEN = 5;
  private static final double LEAST_COLUMN = 130;

  /** Between two steps side by side, mm. */
  private static final double GUTTER = 8;

  /** How many steps have room side by side. */
  static int across(double width) {
    return Math.max(1, (int) ((width + GUTTER) / (LEAST_COLUMN + GUTTER)));
  }

  /** The width of each. */
  static double each(double width) {
    int across = across(width);
    return (width - (across - 1) * GUTTER) / across;
  }

  @Override
  public double height() {
    return HEADING * Paragraph.LINE_SPACING
        + rows.stream().mapToDouble(StepRows::heightOf).sum()
        + BETWEEN * rows.size();
  }

  @Override
  public List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Paragraph.text(left, top - HEADING, HEADING, heading, Figure.Align.START));
    double y = top - HEADING * Paragraph.LINE_SPACING - BETWEEN;
    for (List<StepText> row : rows) {
      double x = left;
      for (StepText step : row) {
        figures.addAll(step.figures(x, y));
        x += step.width() + GUTTER;
      }
      y -= heightOf(row) + BETWEEN;
    }
    return figures;
  }

  private static double heightOf(List<StepText> row) {
    return row.stream().mapToDouble(StepText::height).max().orElse(0);
  }
}
