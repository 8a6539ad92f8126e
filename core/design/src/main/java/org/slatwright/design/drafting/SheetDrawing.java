package org.slatwright.design.drafting;

import org.slatwright.api.drawing.Sheet;

/** Something that is drawn on a sheet of its own. */
interface SheetDrawing {

  /** The sheet, as number {@code number} of {@code count}. */
  Sheet sheet(int number, int count);
}
