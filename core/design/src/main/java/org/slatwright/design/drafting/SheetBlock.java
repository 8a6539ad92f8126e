package org.slatwright.design.drafting;

import org.slatwright.api.drawing.View;

/** A drawing with its dimensions and caption that can be set anywhere on a sheet. */
interface SheetBlock {

  /** In mm on paper. */
  double width();

  /** In mm on paper. */
  double height();

  /** Drawn with the lower left corner of its room there. */
  View view(double left, double bottom);
}
