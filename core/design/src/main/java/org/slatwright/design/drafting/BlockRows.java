package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.View;

/** Blocks set in rows from the top, each row and the space around them shared out evenly. */
record BlockRows(List<List<SheetBlock>> rows) {

  /** Each in the first row that has room for it within {@code width}. */
  static BlockRows of(List<SheetBlock> blocks, double width) {
    List<List<SheetBlock>> rows = new ArrayList<>();
    for (SheetBlock block : blocks) {
      Optional<List<SheetBlock>> room =
          rows.stream().filter(row -> width(row) + block.width() <= width).findFirst();
      if (room.isPresent()) {
        room.get().add(block);
      } else {
        rows.add(new ArrayList<>(List.of(block)));
      }
    }
    return new BlockRows(rows);
  }

  boolean fits(double width, double height) {
    return height() <= height && rows.stream().allMatch(row -> width(row) <= width);
  }

  /** Set in the room with that lower left corner. */
  List<View> views(double left, double bottom, double width, double height) {
    List<View> views = new ArrayList<>();
    double gap = Math.max(0, (height - height()) / (rows.size() + 1));
    double y = bottom + height;
    for (List<SheetBlock> row : rows) {
      y -= gap + height(row);
      double between = Math.max(0, (width - width(row)) / (row.size() + 1));
      double x = left;
      for (SheetBlock block : row) {
        x += between;
        views.add(block.view(x, y + height(row) - block.height()));
        x += block.width();
      }
    }
    return views;
  }

  private double height() {
    return rows.stream().mapToDouble(BlockRows::height).sum();
  }

  private static double height(List<SheetBlock> row) {
    return row.stream().mapToDouble(SheetBlock::height).max().orElse(0);
  }

  private static double width(List<SheetBlock> row) {
    return row.stream().mapToDouble(SheetBlock::width).sum();
  }
}
