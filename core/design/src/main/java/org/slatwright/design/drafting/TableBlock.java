package org.slatwright.design.drafting;

import java.util.Optional;
import org.slatwright.api.drawing.View;

/** A table under its heading among drawings. */
record TableBlock(String id, HeadedTable table) implements SheetBlock {

  private static final double EDGE = 3;

  TableBlock(String id, String heading, Table table) {
    this(id, new HeadedTable(heading, table));
  }

  @Override
  public double width() {
    return table.table().width() + 2 * EDGE;
  }

  @Override
  public double height() {
    return table.height() + EDGE;
  }

  @Override
  public View view(double left, double bottom) {
    return new View(
        id, table.heading(), Optional.empty(), table.figures(left + EDGE, bottom + height()));
  }
}
