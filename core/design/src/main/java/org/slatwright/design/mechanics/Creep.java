package org.slatwright.design.mechanics;

/** How wood gives in over the years under a load that stays. */
public final class Creep {

  /** The share of stored goods that is always there: EN 1990, table A1.1, category E. */
  private static final double ALWAYS_THERE = 0.8;

  private Creep() {}

  /**
   * What a deflection grows by over the years: δ_fin = δ·(1 + ψ2·k_def), EN 1995-1-1, 2.2.3.
   *
   * @param kDef of the wood where it stands, EN 1995-1-1, table 3.2
   */
  public static double factor(double kDef) {
    return 1 + ALWAYS_THERE * kDef;
  }
}
