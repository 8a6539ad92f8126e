package org.slatwright.design.wood;

/** Strength classes of structural timber, EN 338; what ungraded stock is reckoned as. */
public enum StrengthClass {
  C14(14, 3.0, 2.0, 7000, 290, 350),
  C16(16, 3.2, 2.2, 8000, 310, 370),
  C18(18, 3.4, 2.2, 9000, 320, 380),
  C24(24, 4.0, 2.5, 11000, 350, 420),
  C30(30, 4.0, 2.7, 12000, 380, 460),
  D24(24, 3.7, 4.9, 10000, 485, 580);

  private final double bending;
  private final double shear;
  private final double crushing;
  private final double stiffness;
  private final double leastDensity;
  private final double density;

  StrengthClass(
      double bending,
      double shear,
      double crushing,
      double stiffness,
      double leastDensity,
      double density) {
    this.bending = bending;
    this.shear = shear;
    this.crushing = crushing;
    this.stiffness = stiffness;
    this.leastDensity = leastDensity;
    this.density = density;
  }

  /** Characteristic bending strength, MPa. */
  public double bending() {
    return bending;
  }

  /** Characteristic shear strength, MPa. */
  public double shear() {
    return shear;
  }

  /** Characteristic compression strength across the grain, MPa. */
  public double crushing() {
    return crushing;
  }

  /** Mean modulus of elasticity along the grain, MPa. */
  public double stiffness() {
    return stiffness;
  }

  /** Characteristic density, kg/m³. */
  public double leastDensity() {
    return leastDensity;
  }

  /** Mean density, kg/m³. */
  public double density() {
    return density;
  }
}
