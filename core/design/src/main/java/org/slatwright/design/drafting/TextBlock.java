package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;

/** Lettering under a heading, as wide as the sheet. */
interface TextBlock {

  /** In mm on paper. */
  double height();

  /** Drawn with its upper left corner there. */
  List<Figure> figures(double left, double top);
}
