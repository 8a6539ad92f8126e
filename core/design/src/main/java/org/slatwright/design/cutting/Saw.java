package org.slatwright.design.cutting;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Stock;
import org.slatwright.design.sizing.Fitting;
import org.slatwright.design.sizing.Supplies;

/**
 * How a timber is cut.
 *
 * @param kerf width of a cut
 * @param endTrim squared off each end of a stock length
 */
record Saw(Length kerf, Length endTrim) {

  /** Rod needs no trim: the end of a dowel is chamfered, not squared. */
  static Saw of(Supplies supplies, Stock stock) {
    return new Saw(supplies.kerf(), stock == Stock.DOWEL_ROD ? Length.ZERO : supplies.endTrim());
  }

  /** How many pieces come out of a clear run, a kerf between two. */
  long pieces(Length run, Length each) {
    return Fitting.pieces(run, each, kerf);
  }
}
