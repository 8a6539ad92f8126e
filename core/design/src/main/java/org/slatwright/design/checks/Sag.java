package org.slatwright.design.checks;

/**
 * Sag after years against 0.5 % of the span (BS EN 14073-3, from a secondary source); twice that is
 * an error. Creep is that of EN 1995-1-1, 2.2.3.
 */
final class Sag {

  static final String SOURCE =
      "BS EN 14073-3 (from a secondary source): 1/200 of the span; EN 1995-1-1, 2.2.3";

  private static final double SPAN_PER_SAG = 200;

  private Sag() {}

  /** Both in mm. */
  static Reckoned over(double span, double sag) {
    double most = span / SPAN_PER_SAG;
    return new Reckoned(sag, most, 2 * most);
  }
}
