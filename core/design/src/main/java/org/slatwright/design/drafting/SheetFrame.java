package org.slatwright.design.drafting;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.View;

/**
 * The frame of a sheet and the room inside it: 20 mm from the left edge, where sheets are bound,
 * and 10 mm from the others; centring marks on the middle of each side (ISO 5457).
 */
record SheetFrame(Paper paper, boolean landscape) {

  private static final double BINDING = 20;
  private static final double MARGIN = 10;
  private static final double CENTRING_MARK = 5;

  /** ISO 5457: A4 stands upright, A3 (420 mm) and larger lie; so then do letter and tabloid. */
  private static final double LYING_FROM = 420;

  /** The way that the paper usually lies. */
  static SheetFrame usual(Paper paper) {
    return new SheetFrame(paper, paper.longSide().inMm() >= LYING_FROM);
  }

  double sheetWidth() {
    return (landscape ? paper.longSide() : paper.shortSide()).inMm();
  }

  double sheetHeight() {
    return (landscape ? paper.shortSide() : paper.longSide()).inMm();
  }

  double left() {
    return BINDING;
  }

  double right() {
    return sheetWidth() - MARGIN;
  }

  double bottom() {
    return MARGIN;
  }

  double top() {
    return sheetHeight() - MARGIN;
  }

  double width() {
    return right() - left();
  }

  double height() {
    return top() - bottom();
  }

  View view() {
    return new View("frame", "Sheet frame", Optional.empty(), figures());
  }

  private List<Figure> figures() {
    double x = sheetWidth() / 2;
    double y = sheetHeight() / 2;
    return List.of(
        Strokes.box(left(), bottom(), right(), top(), LineKind.BORDER),
        Strokes.line(x, bottom(), x, bottom() - CENTRING_MARK, LineKind.BORDER),
        Strokes.line(x, top(), x, top() + CENTRING_MARK, LineKind.BORDER),
        Strokes.line(left(), y, left() - CENTRING_MARK, y, LineKind.BORDER),
        Strokes.line(right(), y, right() + CENTRING_MARK, y, LineKind.BORDER));
  }
}
