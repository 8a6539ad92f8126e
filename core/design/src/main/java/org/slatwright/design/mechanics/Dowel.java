package org.slatwright.design.mechanics;

/**
 * A plain wooden dowel glued with white (PVA) glue into a hole that it fits snugly.
 *
 * @param diameter mm
 * @param depth in the member that holds it less deep, mm
 * @param member shear strength along the grain of that member, mean of clear wood, MPa
 * @param own the same of the dowel, MPa
 */
public record Dowel(double diameter, double depth, double member, double own) {

  /** What a test breaks is divided by, for knots, years and the hands of makers: our own choice. */
  private static final double SAFETY = 4;

  /**
   * On the glued surface, MPa: our own choice. The least mean that tests found, plain beech dowels
   * in damp air, is 3.0 MPa (BioResources 15(1), 1665, 2020).
   */
  private static final double GLUE = 1.2;

  /**
   * The pull that draws it out, N: {@code 0.834·D·L^0.89·(0.95·S1 + S2)} in lbf, inches and psi
   * (Eckelman 1969, from memory), its factors for glue, fit and surface 1.
   *
   * <p>Fitted to dowels in side grain. In both side and end grain it was found to reckon too little
   * where S1 + S2 is below 25 MPa (Chen et al., BioResources 14(4), 9214, 2019), which is the safe
   * side, and is where softwoods lie.
   */
  public double withdrawal() {
    double inches =
        diameter / InchPound.MM_PER_INCH * Math.pow(depth / InchPound.MM_PER_INCH, 0.89);
    return 0.834 * inches * (0.95 * psi(member) + psi(own)) * InchPound.N_PER_LBF;
  }

  /** The pull that it may bear, N: a quarter of what draws it out, and 1.2 MPa on the glue. */
  public double safeWithdrawal() {
    return Math.min(withdrawal() / SAFETY, GLUE * gluedSurface());
  }

  /**
   * The force across it that it may bear where the members meet, N: shear stress 4/3·V/A (textbook,
   * round section). Wood cut across its fibres is stronger than along them, so this is safe.
   */
  public double safeShear() {
    return own / SAFETY * Math.PI * diameter * diameter / 4 * 3 / 4;
  }

  /**
   * The moment about its own axis that it may bear, N·mm: that of its glue, {@code τ·π·D·L·D/2}, or
   * where it is less that of the dowel itself, {@code τ·π·D³/16} (textbook, round bar).
   */
  public double safeTwist() {
    return Math.min(
        GLUE * gluedSurface() * diameter / 2,
        own / SAFETY * Math.PI * diameter * diameter * diameter / 16);
  }

  private double gluedSurface() {
    return Math.PI * diameter * depth;
  }

  private static double psi(double mpa) {
    return mpa * InchPound.MM_PER_INCH * InchPound.MM_PER_INCH / InchPound.N_PER_LBF;
  }
}
