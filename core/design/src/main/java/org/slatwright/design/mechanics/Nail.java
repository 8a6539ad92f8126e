package org.slatwright.design.mechanics;

/**
 * A nail or brad with a smooth shank.
 *
 * @param diameter of the shank, mm
 */
public record Nail(double diameter) implements Fastening {

  /** 54.12·G^2.5·D·L: eq. 8-1. */
  @Override
  public double withdrawal(double gravity, double depth) {
    return 54.12 * Math.pow(gravity, 2.5) * diameter * depth;
  }
}
