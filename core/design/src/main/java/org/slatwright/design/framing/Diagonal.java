package org.slatwright.design.framing;

import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/** From corner to corner of a rectangle, to see whether it is square. */
public final class Diagonal {

  private Diagonal() {}

  /** To the millimetre or sixteenth of an inch that a tape shows. */
  public static Length onTape(Length one, Length other, Unit unit) {
    double mm = Math.hypot(one.inMm(), other.inMm());
    Length step = unit.metricOrInch(Length.mm(1), Length.inches(1, 16));
    return Length.roundedMm(mm).plus(step.half()).snappedDown(step);
  }
}
