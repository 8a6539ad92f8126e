package org.slatwright.design.drafting;

import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.design.drafting.Spans.Span;

/**
 * Where what is cut from a board lies on the sheet.
 *
 * @param left the end that is cut first, in mm on the sheet
 * @param bottom the edge that lies against the fence
 * @param along mm on paper for one of the board's length
 * @param across mm on paper for one of its width
 */
record BoardPlace(double left, double bottom, double along, double across) {

  /** The same board elsewhere. */
  BoardPlace at(double otherLeft, double otherBottom) {
    return new BoardPlace(otherLeft, otherBottom, along, across);
  }

  PaperBox box(Cut cut) {
    return box(cut.from(), cut.length(), cut.across(), cut.width());
  }

  PaperBox box(Offcut offcut) {
    return box(offcut.from(), offcut.length(), offcut.across(), offcut.width());
  }

  /** A stretch of a board, as wide as that. */
  PaperBox stretch(Span span, Length width) {
    return box(new Length(span.from()), span.length(), Length.ZERO, width);
  }

  private PaperBox box(Length from, Length length, Length up, Length width) {
    double x = left + from.inMm() * along;
    double y = bottom + up.inMm() * across;
    return new PaperBox(x, y, x + length.inMm() * along, y + width.inMm() * across);
  }
}
