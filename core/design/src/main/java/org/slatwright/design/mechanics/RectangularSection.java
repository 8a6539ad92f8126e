package org.slatwright.design.mechanics;

/**
 * The section of a beam, in mm.
 *
 * @param breadth level, across the load; more than zero
 * @param depth upright, along the load; more than zero
 */
public record RectangularSection(double breadth, double depth) {

  /** I = b·h³/12, in mm⁴: Wood Handbook (FPL-GTR-282), eq. 9-3. */
  public double inertia() {
    return breadth * depth * depth * depth / 12;
  }

  /** S = b·h²/6, in mm³: bending stress is moment over this. */
  public double modulus() {
    return breadth * depth * depth / 6;
  }

  /** A′ = 5/6·b·h, in mm², what resists being sheared: Wood Handbook, below eq. 9-2. */
  public double shearArea() {
    return breadth * depth * 5 / 6;
  }
}
