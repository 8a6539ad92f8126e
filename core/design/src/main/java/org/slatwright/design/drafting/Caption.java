package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;

/** Two lines above a drawing: what it is, and what no dimension says. */
record Caption(String title, String details) {

  private static final double TITLE = 3.5;
  private static final double DETAILS = DimensionChain.LETTERING;
  private static final double BETWEEN = 1.8;

  /** In mm. */
  static final double HEIGHT = TITLE + BETWEEN + DETAILS + 1;

  /** In mm. */
  double width() {
    return Math.max(Lettering.width(title, TITLE), Lettering.width(details, DETAILS));
  }

  /** With the upper left corner there. */
  List<Figure> figures(double left, double top) {
    double second = top - TITLE - BETWEEN - DETAILS;
    return List.of(
        Paragraph.text(left, top - TITLE, TITLE, title, Figure.Align.START),
        Paragraph.text(left, second, DETAILS, details, Figure.Align.START));
  }
}
