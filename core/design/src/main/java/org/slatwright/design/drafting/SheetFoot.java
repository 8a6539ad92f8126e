package org.slatwright.design.drafting;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.slatwright.api.drawing.View;

/**
 * What lies along the foot of a general arrangement: the title block at the right, the parts list
 * beside it where there is room and else above it, and the notes above both.
 */
final class SheetFoot {

  private static final double GAP = 4;
  private static final double LEAST_BESIDE = 83;
  private static final double PAD = 3;

  private final SheetFrame frame;
  private final Table partsList;
  private final Columns notes;
  private final boolean beside;

  /** With the parts list made for the room that it is given, in mm. */
  SheetFoot(SheetFrame frame, DoubleFunction<Table> partsList, List<String> notes) {
    this.frame = frame;
    double room = frame.width() - TitleBlock.width(frame) - GAP;
    this.beside = room >= LEAST_BESIDE;
    this.partsList = partsList.apply(beside ? room : frame.width());
    this.notes = new Columns("Notes", notes, frame.width() - 2 * PAD);
  }

  /** How much of the sheet is left above it, in mm. */
  double roomAbove() {
    return frame.top() - top();
  }

  /** Where it ends. */
  double top() {
    return blocksTop() + GAP + notes.height();
  }

  List<View> views(TitleBlock block) {
    double bottom = beside ? frame.bottom() : frame.bottom() + TitleBlock.HEIGHT;
    return List.of(
        new View("notes", "Notes", Optional.empty(), notes.figures(frame.left() + PAD, top())),
        new View(
            "parts-list", "Parts list", Optional.empty(), partsList.figures(frame.left(), bottom)),
        block.view(frame));
  }

  private double blocksTop() {
    return frame.bottom()
        + (beside
            ? Math.max(TitleBlock.HEIGHT, partsList.height())
            : TitleBlock.HEIGHT + partsList.height());
  }
}
