package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.design.drafting.PaperBox;
import org.slatwright.design.drafting.Strokes;

/**
 * Where a tile is laid over one before it: along its upper edge when {@code level}, along its left
 * edge otherwise.
 *
 * @param letter the same on both tiles
 * @param row of the earlier tile
 * @param column of the earlier tile
 * @param level whether the later tile is the one below, not the one to the right
 * @param grid of all the tiles
 */
record Seam(String letter, int row, int column, boolean level, Grid grid) {

  private static final int LETTERS = 26;

  /** Every seam, by the earlier tile, the one below it first. */
  static List<Seam> of(Grid grid) {
    List<Seam> seams = new ArrayList<>();
    for (int row = 0; row < grid.rows().size(); row++) {
      for (int column = 0; column < grid.columns().size(); column++) {
        if (row + 1 < grid.rows().size()) {
          seams.add(new Seam(letter(seams.size()), row, column, true, grid));
        }
        if (column + 1 < grid.columns().size()) {
          seams.add(new Seam(letter(seams.size()), row, column, false, grid));
        }
      }
    }
    return seams;
  }

  /** A to Z, then AA to AZ, BA … */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }

  boolean isAfter(int ofRow, int ofColumn) {
    return row == ofRow && column == ofColumn;
  }

  boolean isBefore(int ofRow, int ofColumn) {
    return laterRow() == ofRow && laterColumn() == ofColumn;
  }

  int laterRow() {
    return level ? row + 1 : row;
  }

  int laterColumn() {
    return level ? column : column + 1;
  }

  /** The edge of the later tile, from corner to corner. */
  Figure trimLine() {
    PaperBox later = grid.window(laterRow(), laterColumn());
    return level
        ? Strokes.line(later.left(), later.top(), later.right(), later.top(), LineKind.HIDDEN)
        : Strokes.line(later.left(), later.bottom(), later.left(), later.top(), LineKind.HIDDEN);
  }

  /** How far along the trim line no third tile meets these two. */
  Stretch free() {
    PaperBox window = grid.window(row, column);
    int index = level ? column : row;
    int last = (level ? grid.columns() : grid.rows()).size() - 1;
    double before = index > 0 ? Cuts.OVERLAP_MM : 0;
    double after = index < last ? Cuts.OVERLAP_MM : 0;
    return level
        ? new Stretch(window.left() + before, window.right() - after)
        : new Stretch(window.bottom() + after, window.top() - before);
  }

  /** A place so far along the trim line. */
  PaperPoint on(double along) {
    PaperBox later = grid.window(laterRow(), laterColumn());
    return level ? new PaperPoint(along, later.top()) : new PaperPoint(later.left(), along);
  }
}
