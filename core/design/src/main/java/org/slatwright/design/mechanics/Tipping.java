package org.slatwright.design.mechanics;

/**
 * When a stiff body on a flat floor tips over an edge of its feet: statics, moments about that
 * edge. It is taken not to slide, and neither to bend nor to sink in; on a carpet it tips sooner.
 *
 * <p>The lever is how far its centre of gravity lies behind the edge, level, in mm and not below
 * zero.
 */
public final class Tipping {

  /** Standard gravity, m/s²: CGPM 1901. */
  public static final double GRAVITY = 9.80665;

  private Tipping() {}

  /**
   * The level force that tips it: F = W · lever / height.
   *
   * @param weight in N
   * @param height above the floor at which it is pushed, mm, above zero
   * @return in N
   */
  public static double push(double weight, double lever, double height) {
    return weight * lever / height;
  }

  /**
   * The force straight down that tips it: F = W · lever / reach.
   *
   * @param weight in N
   * @param reach how far beyond the edge it is pulled, mm, above zero
   * @return in N
   */
  public static double pull(double weight, double lever, double reach) {
    return weight * lever / reach;
  }

  /**
   * The slope of the floor on which it tips: atan(lever / height).
   *
   * @param height of its centre of gravity, mm, above zero
   * @return in degrees
   */
  public static double tilt(double lever, double height) {
    return Math.toDegrees(Math.atan2(lever, height));
  }

  /**
   * How much longer its footing must be for a moment about the edge, where its centre of gravity
   * stays as far from the middle and each mm of footing adds some mass. With the added length s it
   * is the greater root of {@code (kg + perMm · s) · (lever + s/2) · g = moment}.
   *
   * @param moment in N·mm
   * @param kg its mass, above zero
   * @param perMm mass added by each mm, kg
   * @return in mm; zero where it stands as it is
   */
  public static double lengthening(double moment, double kg, double lever, double perMm) {
    double missing = moment / GRAVITY - kg * lever;
    double linear = kg / 2 + perMm * lever;
    // 2c/(b + √(b² + 4ac)): the root of a·s² + b·s - c that also holds where a is zero
    return missing <= 0
        ? 0
        : 2 * missing / (linear + Math.sqrt(linear * linear + 2 * perMm * missing));
  }

  /**
   * How much less far beyond the edge it may be pulled, where each mm less takes some mass off it
   * and leaves the lever as it is: the s of {@code (kg - perMm · s) · lever · g = force · (reach -
   * s)}.
   *
   * @param force straight down, N
   * @param reach how far beyond the edge, mm; shorter than the lever
   * @param kg its mass, above zero
   * @param perMm mass taken off by each mm, kg; all of them together no more than its mass
   * @return in mm; zero where it stands as it is
   */
  public static double shortening(
      double force, double reach, double kg, double lever, double perMm) {
    double missing = force * reach - kg * lever * GRAVITY;
    return missing <= 0 ? 0 : missing / (force - perMm * lever * GRAVITY);
  }
}
