package org.slatwright.design.mechanics;

/**
 * How wood takes up moisture from the air, and how far it swells and shrinks across its grain.
 * Moisture contents are in percent of the oven-dry mass. Along the grain wood keeps its length
 * within 0.1 to 0.2 % from green to oven-dry, which nothing here counts.
 */
public final class Moisture {

  /** Where wood no longer swells, in percent: Wood Handbook, chapter 13. */
  private static final double SATURATION = 30;

  private Moisture() {}

  /**
   * Change of a size across the grain, D·C·ΔM: Wood Handbook, equation 13-2 (from memory), with the
   * coefficients of table 13-5; from 6 to 14 % moisture.
   *
   * @param size in mm, at moisture {@code from}
   * @param coefficient of dimensional change, per 1 %
   * @return in mm; negative when it shrinks
   */
  public static double change(double size, double coefficient, double from, double to) {
    return size * coefficient * (to - from);
  }

  /**
   * The same from 0 to 30 %: D·(M_F − M_I) / (3000 / S − 30 + M_I), Wood Handbook, chapter 13 (from
   * memory), with the total shrinkage S that stands behind the coefficient. Moisture beyond 30 %
   * counts as 30.
   */
  public static double changeOverWideRange(
      double size, double coefficient, double from, double to) {
    double start = Math.min(from, SATURATION);
    double end = Math.min(to, SATURATION);
    double per = 100 * SATURATION / shrinkage(coefficient) - SATURATION + start;
    return size * (end - start) / per;
  }

  /**
   * The coefficient of dimensional change of wood that shrinks so much: 1 / (3000 / S − 20), which
   * is {@link #changeOverWideRange} at 10 %, and how table 13-5 follows from table 4-3.
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

  /**
   * The moisture content that wood comes to in still air: Wood Handbook, equation 4-5.
   *
   * @param celsius temperature, 0 to 100 °C
   * @param humidity relative, 0 to below 1
   */
  public static double equilibrium(double celsius, double humidity) {
    double t = celsius;
    double w = 349 + 1.29 * t + 0.0135 * t * t;
    double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
    double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
    double kh = k * humidity;
    double first = k1 * kh;
    double second = k1 * k2 * kh * kh;
    return 1800 / w * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
  }
}
