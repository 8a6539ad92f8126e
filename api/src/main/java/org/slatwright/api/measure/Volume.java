package org.slatwright.api.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A volume of timber.
 *
 * @param cubicMillimetres whole, never negative
 */
public record Volume(long cubicMillimetres) {

  public static final Volume ZERO = new Volume(0);

  private static final BigDecimal MM3_PER_CUBIC_METRE = BigDecimal.valueOf(1_000_000_000);

  /** A board foot is 144 cubic inches of exactly 25.4 mm. */
  private static final BigDecimal MM3_PER_BOARD_FOOT = new BigDecimal("2359737.216");

  private static final BigDecimal NM3_PER_MM3 = BigDecimal.TEN.pow(18);

  public Volume {
    if (cubicMillimetres < 0) {
      throw new IllegalArgumentException("a volume of " + cubicMillimetres + " mm³");
    }
  }

  /** Of a straight bar, rounded to a cubic millimetre. */
  public static Volume of(Length length, Length width, Length thickness) {
    return new Volume(
        BigDecimal.valueOf(length.nanometres())
            .multiply(BigDecimal.valueOf(width.nanometres()))
            .multiply(BigDecimal.valueOf(thickness.nanometres()))
            .divide(NM3_PER_MM3, 0, RoundingMode.HALF_UP)
            .longValueExact());
  }

  public Volume plus(Volume other) {
    return new Volume(Math.addExact(cubicMillimetres, other.cubicMillimetres));
  }

  public Volume times(long count) {
    return new Volume(Math.multiplyExact(cubicMillimetres, count));
  }

  /**
   * For a person: {@code 0.0325 m³} in a plan in millimetres, {@code 13.75 board feet} in one in
   * inches, of the sizes as measured. The same on every machine: no locale.
   */
  public String withUnit(Unit unit) {
    BigDecimal one = unit.metricOrInch(MM3_PER_CUBIC_METRE, MM3_PER_BOARD_FOOT);
    BigDecimal shown =
        BigDecimal.valueOf(cubicMillimetres)
            .divide(one, unit.metricOrInch(4, 2), RoundingMode.HALF_UP);
    return shown.toPlainString() + unit.metricOrInch(" m³", " board feet");
  }
}
