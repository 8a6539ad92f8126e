package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/** A place on a flat thing: x to the right, y up. */
public record Point2(Length x, Length y) {

  /** Where the axes meet: the lower left corner of the thing. */
  public static final Point2 ORIGIN = new Point2(Length.ZERO, Length.ZERO);

  /** This place moved right by {@code dx} and up by {@code dy}. */
  public Point2 moved(Length dx, Length dy) {
    return new Point2(x.plus(dx), y.plus(dy));
  }

  /** The straight distance to {@code other}, in mm. */
  public double mmTo(Point2 other) {
    return Math.hypot(other.x.minus(x).inMm(), other.y.minus(y).inMm());
  }
}
