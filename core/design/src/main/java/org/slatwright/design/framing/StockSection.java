package org.slatwright.design.framing;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;

/**
 * The section of the stock that a part is cut from, in the order that the rack file states it:
 * width across the frame and depth of an upright, width and height of a rail, thickness and width
 * of a slat.
 */
public record StockSection(Length first, Length second) {

  /** Of a part that is not round. */
  public static StockSection of(Part part) {
    Length width = part.shape().width();
    Length thickness = part.shape().thickness();
    return part.role() == Role.UPRIGHT
        ? new StockSection(width, thickness)
        : new StockSection(thickness, width);
  }
}
