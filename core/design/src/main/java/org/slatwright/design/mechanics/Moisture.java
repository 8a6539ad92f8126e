package org.slatwright.design.mechanics;

/**
 * How far wood swells and shrinks across its grain. Moisture contents are in percent of the
 * oven-dry mass. Along the grain wood keeps its length within 0.1 to 0.2 % from green to oven-dry,
 * which nothing here counts.
 */
public final class Moisture {

  /** Where wood no longer swells, in percent: Wood Handbook, chapter 13. */
  private static final double SATURATION = 30;

  private Moisture() {}

  /**
   * Change of a size across the grain from 0 to 30 % moisture: D·(M_F − M_I) / (3000 / S − 30 +
   * M_I), Wood Handbook, chapter 13 (from memory), with the total shrinkage S that stands behind
   * the coefficient of table 13-5. Moisture beyond 30 % counts as 30. From 6 to 14 % it is within
   * half a percent of the shorter D·C·ΔM, equation 13-2.
   *
   * @param size in mm, at moisture {@code from}
   * @param coefficient of dimensional change, per 1 %
   * @return in mm; negative when it shrinks
   */
  public static double change(double size, double coefficient, double from, double to) {
    double start = Math.min(from, SATURATION);
    double end = Math.min(to, SATURATION);
    double per = 100 * SATURATION / shrinkage(coefficient) - SATURATION + start;
    return size * (end - start) / per;
  }

  /**
   * The coefficient of dimensional change of wood that shrinks so much: 1 / (3000 / S − 20), which
   * is {@link #change} at 10 %, and how table 13-5 follows from table 4-3.
   *
   * @param shrinkage from green to oven-dry, in percent of the green size; greater than zero
   */
  public static double coefficient(double shrinkage) {
    return 1 / (100 * SATURATION / shrinkage - SATURATION + 10);
  }

  /** The other way round: the total shrinkage in percent behind a coefficient. */
  static double shrinkage(double coefficient) {
    return 100 * SATURATION / (1 / coefficient + SATURATION - 10);
  }
}
