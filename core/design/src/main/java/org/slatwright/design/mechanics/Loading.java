package org.slatwright.design.mechanics;

/**
 * How one load W lies on a beam of length L: the coefficients of its greatest deflection {@code
 * bending·W·L³/(E·I) + shear·W·L/(G·A′)} and of its greatest moment {@code moment·W·L}.
 *
 * <p>Deflections: Wood Handbook (FPL-GTR-282, 2021), table 9-1. Moments: textbook statics.
 */
public enum Loading {
  /** Spread evenly over a beam that rests on its two ends. */
  UNIFORM(5.0 / 384, 1.0 / 8, 1.0 / 8),
  /** In the middle of a beam that rests on its two ends. */
  CENTRE(1.0 / 48, 1.0 / 4, 1.0 / 4),
  /** Spread evenly over a beam that is held fast at one end, free at the other. */
  UNIFORM_CANTILEVER(1.0 / 8, 1.0 / 2, 1.0 / 2);

  private final double bending;
  private final double shear;
  private final double moment;

  Loading(double bending, double shear, double moment) {
    this.bending = bending;
    this.shear = shear;
    this.moment = moment;
  }

  double bending() {
    return bending;
  }

  double shear() {
    return shear;
  }

  double moment() {
    return moment;
  }
}
