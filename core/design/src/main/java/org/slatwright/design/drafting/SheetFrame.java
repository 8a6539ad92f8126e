package org.slatwright.design.drafting;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.View;

/**
 * The frame of a sheet and the room inside it: 20 mm from the left edge, where sheets are bound,
 * and 10 mm from the others; centring marks on the middle of each side (ISO 5457).
 */
record SheetFrame(Paper paper, boolean landscape) {

  private static final double BINDING = 20;
  private static final double MARGIN = 10;
  private static final double CENTRING_MARK = 5;

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
        new Figure.Polyline(
            List.of(
                new PaperPoint(left(), bottom()),
                new PaperPoint(right(), bottom()),
                new PaperPoint(right(), top()),
                new PaperPoint(left(), top())),
            true,
            LineKind.BORDER),
        mark(x, bottom(), x, bottom() - CENTRING_MARK),
        mark(x, top(), x, top() + CENTRING_MARK),
        mark(left(), y, left() - CENTRING_MARK, y),
        mark(right(), y, right() + CENTRING_MARK, y));
  }

  private static Figure mark(double x1, double y1, double x2, double y2) {
    return Figure.Polyline.line(new PaperPoint(x1, y1), new PaperPoint(x2, y2), LineKind.BORDER);
  }
}
