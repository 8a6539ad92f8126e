package org.slatwright.api.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A mass.
 *
 * @param grams whole grams, never negative
 */
public record Mass(long grams) implements Comparable<Mass> {

  /** The avoirdupois pound by the International Yard and Pound Agreement of 1959. */
  private static final BigDecimal GRAMS_PER_POUND = new BigDecimal("453.59237");

  /** The avoirdupois ounce, exactly a sixteenth of the pound. */
  private static final BigDecimal GRAMS_PER_OUNCE = new BigDecimal("28.349523125");

  private static final BigDecimal GRAMS_PER_KILOGRAM = BigDecimal.valueOf(1000);
  private static final BigDecimal TENTH = new BigDecimal("0.1");

  public Mass {
    if (grams < 0) {
      throw new IllegalArgumentException("a mass of " + grams + " g");
    }
  }

  /** The nearest whole gram. */
  public static Mass roundedKg(double kilograms) {
    return new Mass(Math.round(kilograms * 1000));
  }

  /** Of one kilogram for a maker who measures in millimetres, of one pound for one in inches. */
  public static BigDecimal gramsEach(Unit unit) {
    return unit.metricOrInch(GRAMS_PER_KILOGRAM, GRAMS_PER_POUND);
  }

  /** In kilograms. */
  public double kg() {
    return grams / 1000.0;
  }

  public Mass plus(Mass other) {
    return new Mass(Math.addExact(grams, other.grams));
  }

  public Mass times(long factor) {
    return new Mass(Math.multiplyExact(grams, factor));
  }

  /**
   * For a person: {@code 12.3 kg} in a plan in millimetres, {@code 27.1 lb} in one in inches, with
   * two decimals below ten; {@code 23 g} below a kilogram, {@code 0.8 oz} below a pound. Only
   * nothing at all is shown as 0. The same on every machine: no locale.
   */
  public String withUnit(Unit unit) {
    BigDecimal large = in(gramsEach(unit));
    if (large.compareTo(BigDecimal.ONE) >= 0) {
      int decimals = large.compareTo(BigDecimal.TEN) < 0 ? 2 : 1;
      return shown(large, decimals) + unit.metricOrInch(" kg", " lb");
    }
    return unit.metricOrInch(grams + " g", ounces());
  }

  private String ounces() {
    BigDecimal ounces = in(GRAMS_PER_OUNCE);
    return shown(ounces, ounces.compareTo(TENTH) < 0 ? 2 : 1) + " oz";
  }

  private BigDecimal in(BigDecimal gramsOfOne) {
    return BigDecimal.valueOf(grams).divide(gramsOfOne, 12, RoundingMode.HALF_UP);
  }

  private static String shown(BigDecimal exact, int decimals) {
    BigDecimal shown = exact.setScale(decimals, RoundingMode.HALF_UP);
    return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
  }

  @Override
  public int compareTo(Mass other) {
    return Long.compare(grams, other.grams);
  }
}
