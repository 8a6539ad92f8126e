package org.slatwright.design.wood;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * Strength classes of structural timber: EN 338:2016, table 1 for softwoods (C), table 3 for
 * hardwoods (D), as printed in two independent transcriptions of the standard. Only those that
 * yards sell.
 */
public enum StrengthClass {
  C14(14, 3.0, 2.0, 7000, 290, 350),
  C16(16, 3.2, 2.2, 8000, 310, 370),
  C18(18, 3.4, 2.2, 9000, 320, 380),
  C20(20, 3.6, 2.3, 9500, 330, 400),
  C22(22, 3.8, 2.4, 10000, 340, 410),
  C24(24, 4.0, 2.5, 11000, 350, 420),
  C27(27, 4.0, 2.5, 11500, 360, 430),
  C30(30, 4.0, 2.7, 12000, 380, 460),
  C35(35, 4.0, 2.7, 13000, 390, 470),
  C40(40, 4.0, 2.8, 14000, 400, 480),
  D18(18, 3.5, 4.8, 9500, 475, 570),
  D24(24, 3.7, 4.9, 10000, 485, 580),
  D30(30, 3.9, 5.3, 11000, 530, 640),
  D35(35, 4.1, 5.4, 12000, 540, 650),
  D40(40, 4.2, 5.5, 13000, 550, 660);

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

  /** The class of that name, in capitals or not. */
  public static Optional<StrengthClass> named(String name) {
    return Stream.of(values()).filter(grade -> grade.name().equalsIgnoreCase(name)).findFirst();
  }

  /**
   * Whether stock of that species is graded so: C for softwoods and poplar, D for hardwoods (EN
   * 338).
   */
  public boolean isFor(Species species) {
    boolean isSoft = species.kind() == Species.Kind.SOFTWOOD;
    return name().startsWith("C") ? isSoft || isPoplar(species) : !isSoft;
  }

  private static boolean isPoplar(Species species) {
    return species.name().endsWith("poplar");
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
