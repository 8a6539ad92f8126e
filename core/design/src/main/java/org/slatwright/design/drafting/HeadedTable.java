package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/** A table under a heading of its own. */
record HeadedTable(String heading, Table table) implements TextBlock {

  private static final double HEADING = 3.5;
  private static final double ABOVE_TABLE = HEADING * Paragraph.LINE_SPACING;

  @Override
  public double height() {
    return ABOVE_TABLE + table.height();
  }

  @Override
  public List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Paragraph.text(left, top - HEADING, HEADING, heading, Figure.Align.START));
    figures.addAll(table.figures(left, top - height()));
    return figures;
  }
}
