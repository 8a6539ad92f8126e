package org.slatwright.design.mechanics;

/**
 * A body as statics sees it: its mass in its centre of gravity. What is taken off a body, such as a
 * hole, has a mass below zero.
 *
 * @param kg its mass
 * @param x to the right, mm
 * @param y to the back, mm
 * @param z up, mm
 */
public record PointMass(double kg, double x, double y, double z) {

  /** Nothing at all. */
  public static final PointMass NONE = new PointMass(0, 0, 0, 0);

  /** Both as one body: their centre of gravity is the mean of both, weighted by mass. */
  public PointMass plus(PointMass other) {
    double both = kg + other.kg;
    return both == 0
        ? NONE
        : new PointMass(
            both,
            (kg * x + other.kg * other.x) / both,
            (kg * y + other.kg * other.y) / both,
            (kg * z + other.kg * other.z) / both);
  }

  /** In N, under standard gravity: 9.80665 m/s² (CGPM 1901). */
  public double weight() {
    return kg * Tipping.GRAVITY;
  }
}
