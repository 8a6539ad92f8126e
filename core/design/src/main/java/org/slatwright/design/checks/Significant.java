package org.slatwright.design.checks;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A reckoned number, to a few significant digits and to the whole below 1000.
 *
 * @param one unit, in the unit that is reckoned in
 * @param unit as it follows the number
 * @param thousands the unit of a thousand of them, told from ten thousand on; blank where makers
 *     know none
 * @param digits significant ones
 * @param least units that are worth a number: {@code under 0.1 mm}
 */
record Significant(double one, String unit, String thousands, int digits, double least)
    implements Measure {

  private static final int WHOLE_DIGITS = 3;
  private static final BigDecimal MANY = BigDecimal.valueOf(10_000);

  @Override
  public String told(double value, int finer) {
    if (finer == 0 && isNoise(value)) {
      return "under " + plain(BigDecimal.valueOf(least)) + unit;
    }
    BigDecimal shown = rounded(value / one, finer);
    return shown.abs().compareTo(MANY) >= 0 && !thousands.isBlank()
        ? plain(rounded(value / one / 1000, finer)) + thousands
        : plain(shown) + unit;
  }

  @Override
  public boolean isNoise(double value) {
    return value > 0 && value / one < least;
  }

  private BigDecimal rounded(double units, int finer) {
    BigDecimal exact = BigDecimal.valueOf(units);
    int whole = Math.min(WHOLE_DIGITS, exact.precision() - exact.scale());
    return exact.round(new MathContext(Math.max(digits, whole) + finer, RoundingMode.HALF_UP));
  }

  private static String plain(BigDecimal shown) {
    return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
  }
}
