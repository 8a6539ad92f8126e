package org.slatwright.api.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An area.
 *
 * @param squareMillimetres whole, never negative
 */
public record Area(long squareMillimetres) {

  /** Of the international foot of exactly 304.8 mm. */
  private static final BigDecimal MM2_PER_SQUARE_FOOT = new BigDecimal("92903.04");

  private static final BigDecimal MM2_PER_SQUARE_METRE = BigDecimal.valueOf(1_000_000);

  public Area {
    if (squareMillimetres < 0) {
      throw new IllegalArgumentException("an area of " + squareMillimetres + " mm²");
    }
  }

  /** In square metres. */
  public double m2() {
    return squareMillimetres / 1e6;
  }

  /**
   * For a person: {@code 4.27 m²} in a plan in millimetres, {@code 46 sq ft} in one in inches. The
   * same on every machine: no locale.
   */
  public String withUnit(Unit unit) {
    BigDecimal one = unit.metricOrInch(MM2_PER_SQUARE_METRE, MM2_PER_SQUARE_FOOT);
    BigDecimal shown =
        BigDecimal.valueOf(squareMillimetres)
            .divide(one, unit.metricOrInch(2, 0), RoundingMode.HALF_UP);
    return shown.toPlainString() + unit.metricOrInch(" m²", " sq ft");
  }
}
