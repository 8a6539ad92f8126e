package org.slatwright.design.mechanics;

/** What the year's moisture contents are checked against. */
public final class StillAir {

  private StillAir() {}

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
