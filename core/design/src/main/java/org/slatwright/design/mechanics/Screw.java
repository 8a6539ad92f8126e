package org.slatwright.design.mechanics;

/**
 * A wood screw in a pilot hole.
 *
 * @param diameter of the shank, mm
 */
public record Screw(double diameter) implements Fastening {

  /** Seven diameters: chapter 8, from memory. */
  @Override
  public double leastDepth(double gravity) {
    return diameter() * 7;
  }

  /** 108.25·G²·D·L: eq. 8-10. */
  @Override
  public double withdrawal(double gravity, double depth) {
    return 108.25 * gravity * gravity * diameter * depth;
  }
}
