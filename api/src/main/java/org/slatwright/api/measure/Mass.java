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

  private static final int DIGITS_BELOW_TEN = 2;

  public Mass {
    if (grams < 0) {
      throw new IllegalArgumentException("a mass of " + grams + " g");
    }
  }

  /** The nearest whole gram. */
  public static Mass roundedKg(double kilograms) {
    return new Mass(Math.round(kilograms * 1000));
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
   * For a person: {@code 12.3 kg} in a plan in millimetres, {@code 27.1 lb} in one in inches; two
   * decimals below ten. The same on every machine: no locale.
   */
  public String withUnit(Unit unit) {
    BigDecimal one = unit.metricOrInch(BigDecimal.valueOf(1000), GRAMS_PER_POUND);
    BigDecimal exact = BigDecimal.valueOf(grams).divide(one, 12, RoundingMode.HALF_UP);
    int digits = exact.compareTo(BigDecimal.TEN) < 0 ? DIGITS_BELOW_TEN : 1;
    BigDecimal shown = exact.setScale(digits, RoundingMode.HALF_UP);
    String number = shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    return number + unit.metricOrInch(" kg", " lb");
  }

  @Override
  public int compareTo(Mass other) {
    return Long.compare(grams, other.grams);
  }
}
