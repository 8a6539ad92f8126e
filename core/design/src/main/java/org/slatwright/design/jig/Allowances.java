package org.slatwright.design.jig;

import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/**
 * The sizes of a saddle that do not come from the stock, in round measures of the maker's units. In
 * inches every one is a multiple of 1/64 in, the finest mark of a rule, so that stock in 64ths
 * gives plates that are marked out without a decimal.
 *
 * <p>All are this project's own workshop rules: common practice, no source.
 *
 * @param units of the rack file
 */
record Allowances(Unit units) {

  /** The finest measure that a plate is marked out in; what no joint fixes is a multiple of it. */
  Length finest() {
    return metricOrInch(Length.roundedMm(0.1), Length.inches(1, 64));
  }

  /**
   * By which the cheeks stand farther apart than the upright is wide: planed or sanded stock varies
   * by a tenth or two along its length. Upright and rail are drilled as one, so being off the
   * middle by half of it harms nothing.
   */
  Length spare() {
    return metricOrInch(Length.roundedMm(0.4), Length.inches(1, 64));
  }

  /**
   * By which a slot is longer than what goes through it. All of it is at one end, so that the other
   * end, pushed home, brings the plates into line exactly.
   */
  Length slotPlay() {
    return metricOrInch(Length.roundedMm(0.1), Length.inches(1, 64));
  }

  /** To take hold of the register by. */
  Length grip() {
    return metricOrInch(Length.mm(12), Length.inches(1, 2));
  }

  /** Thicker is no sheet, and its tabs would fill the cheeks. */
  Length thickestSheet() {
    return metricOrInch(Length.mm(25), Length.inches(1, 1));
  }

  /** Of the corners that a hand meets. */
  Length cornerRadius() {
    return metricOrInch(Length.mm(3), Length.inches(1, 8));
  }

  /** Kept off the glue line between upright and rail on both sides, where glue squeezes out. */
  Length glueGap() {
    return metricOrInch(Length.mm(3), Length.inches(1, 8));
  }

  /** Below this, plywood breaks out beside a slot. */
  Length leastWeb() {
    return metricOrInch(Length.mm(4), Length.inches(3, 16));
  }

  /** Enough in any sheet. */
  Length widestWeb() {
    return metricOrInch(Length.mm(10), Length.inches(3, 8));
  }

  /** Of the upper tabs. */
  Length shortestTab() {
    return metricOrInch(Length.mm(8), Length.inches(5, 16));
  }

  /** Of the upper tabs. */
  Length longestTab() {
    return metricOrInch(Length.mm(20), Length.inches(3, 4));
  }

  /** By which a lower tab is longer than an upper one. */
  Length lowerTabExtra() {
    return metricOrInch(Length.mm(4), Length.inches(3, 16));
  }

  /** Long enough on the rail edge not to rock, short enough not to feel a bow in it. */
  Length leastRegisterWidth() {
    return metricOrInch(Length.mm(20), Length.inches(3, 4));
  }

  /** For the pad of a clamp: those of small bar and C-clamps are about 20 mm across. */
  Length clampLand() {
    return metricOrInch(Length.mm(25), Length.inches(1, 1));
  }

  /** Of the window on the rail line, along the line. */
  Length windowWidth() {
    return metricOrInch(Length.mm(16), Length.inches(5, 8));
  }

  /** Of the window on the rail line, beside the line. */
  Length windowHeight() {
    return metricOrInch(Length.mm(6), Length.inches(1, 4));
  }

  /** By which a printed slot is larger than what goes through it: printed edges swell. */
  Length printedPlay() {
    return metricOrInch(Length.mm(4).dividedBy(10), Length.inches(1, 64));
  }

  /** The wall of a guide bush: a thinner one is pressed out of round. */
  Length leastBushWall() {
    return metricOrInch(Length.mm(1), Length.inches(3, 64));
  }

  private Length metricOrInch(Length metric, Length inch) {
    return units.metricOrInch(metric, inch);
  }
}
