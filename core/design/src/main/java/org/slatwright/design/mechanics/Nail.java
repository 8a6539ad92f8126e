package org.slatwright.design.mechanics;

/**
 * A nail or brad with a smooth shank.
 *
 * @param diameter of the shank, mm
 */
public record Nail(double diameter) implements Fastening {

  /**
   * 14 diameters in light wood (G up to 0.42), 10 in heavy (from 0.61), and between them in
   * proportion, which is our reading of the chapter.
   */
  @Override
  public double leastDepth(double gravity) {
    double heavy = Math.min(1, Math.max(0, (gravity - 0.42) / (0.61 - 0.42)));
    return diameter() * (14 - 4 * heavy);
  }

  /** 54.12·G^2.5·D·L: eq. 8-1. */
  @Override
  public double withdrawal(double gravity, double depth) {
    return 54.12 * Math.pow(gravity, 2.5) * diameter * depth;
  }
}
