package org.slatwright.design.wood;

/**
 * Stock as the checks reckon with it: a species, and the strength class that its knots and grain
 * leave of it.
 */
public record Timber(Species species, StrengthClass grade) {

  /** Partial factor for solid timber: EN 1995-1-1, table 2.3. */
  private static final double SAFETY = 1.3;

  /**
   * Mean modulus of elasticity, MPa: the class's, unless even clear wood of the species has less.
   */
  public double stiffness() {
    return Math.min(grade.stiffness(), species.stiffness());
  }

  /** Design bending strength under a load that stays, MPa: k_mod · f_m,k / γ_M. */
  public double bending(Climate climate) {
    return climate.longTermFactor() * grade.bending() / SAFETY;
  }

  /** Design shear strength under a load that stays, MPa. */
  public double shear(Climate climate) {
    return climate.longTermFactor() * grade.shear() / SAFETY;
  }

  /** Design compression strength across the grain under a load that stays, MPa. */
  public double crushing(Climate climate) {
    return climate.longTermFactor() * grade.crushing() / SAFETY;
  }

  /** Design compression strength across the grain under a short push, MPa. */
  public double crushingAtAPush(Climate climate) {
    return climate.shortTermFactor() * grade.crushing() / SAFETY;
  }
}
