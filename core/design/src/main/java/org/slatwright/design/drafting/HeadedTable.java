package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;

/** A table under a heading of its own. */
record HeadedTable(String heading, Table table) implements TextBlock {

  private static final double HEADING = 3.5;
  private static final double ABOVE_TABLE = HEADING * 0.35;

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
