package org.slatwright.api.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Spells lengths for a person. Millimetres are decimal with a point and every digit there is;
 * inches are whole numbers and reduced fractions down to 1/64 ({@code 4 3/8}), and decimals only
 * where a fraction cannot say it (metric stock in an inch plan); long ones in feet and inches where
 * the maker wants that ({@code 8' 2 3/4"}). The same on every machine: no locale.
 *
 * @param unit the unit to show
 * @param feetAbove what is longer is told in feet and inches; empty where nothing is, as it always
 *     is in millimetres
 */
public record LengthFormat(Unit unit, Optional<Length> feetAbove) {

  private static final long NM_PER_64TH = Length.inches(1, 64).nanometres();
  private static final int INCH_DECIMALS = 4;
  private static final Length FOOT = Length.inches(12, 1);

  public LengthFormat {
    if (unit == Unit.MM && feetAbove.isPresent()) {
      throw new IllegalArgumentException("no feet in millimetres, above " + feetAbove.get());
    }
  }

  /** Without feet. */
  public LengthFormat(Unit unit) {
    this(unit, Optional.empty());
  }

  /**
   * The number alone, such as {@code 1500}, {@code 37.6} or {@code 4 3/8}; in feet and inches with
   * the signs of both.
   */
  public String number(Length length) {
    return isInFeet(length) ? inFeet(length) : ofOneUnit(length);
  }

  private boolean isInFeet(Length length) {
    return feetAbove.filter(most -> length.abs().isMoreThan(most)).isPresent();
  }

  private String inFeet(Length length) {
    long feet = length.abs().wholeTimes(FOOT);
    Length rest = length.abs().minus(FOOT.times(feet));
    return (length.isNegative() ? "-" : "")
        + feet
        + "'"
        + (rest.isZero() ? "" : " " + ofOneUnit(rest) + "\"");
  }

  private String ofOneUnit(Length length) {
    if (unit == Unit.INCH && length.nanometres() % NM_PER_64TH == 0) {
      return fraction(length.nanometres() / NM_PER_64TH);
    }
    return decimal(length);
  }

  /** The number and its unit: {@code 1500 mm}, {@code 4 3/8"}. */
  public String withUnit(Length length) {
    if (isInFeet(length)) {
      return inFeet(length);
    }
    return unit == Unit.INCH ? number(length) + "\"" : number(length) + " mm";
  }

  /** A section or a size, {@code 44 × 70 mm}. */
  public String section(Length first, Length second) {
    return (unit == Unit.INCH ? withUnit(first) : number(first)) + " × " + withUnit(second);
  }

  /** A length and its section, {@code 1500 × 44 × 70 mm}. */
  public String size(Length length, Length first, Length second) {
    return (unit == Unit.INCH ? withUnit(length) : number(length)) + " × " + section(first, second);
  }

  /** As a decimal number with a point, for tables that are reckoned with: {@code 4.375}. */
  public String decimal(Length length) {
    BigDecimal value =
        BigDecimal.valueOf(length.nanometres())
            .divide(BigDecimal.valueOf(unit.nanometres()), 12, RoundingMode.HALF_UP);
    if (unit == Unit.INCH && length.nanometres() % NM_PER_64TH != 0) {
      value = value.setScale(INCH_DECIMALS, RoundingMode.HALF_UP);
    }
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /**
   * To the nearest whole millimetre or eighth of an inch: as much as there is to say of a length
   * that was reckoned from weights and is not cut by.
   */
  public Length rounded(Length length) {
    Length step = unit.metricOrInch(Length.mm(1), Length.inches(1, 8));
    return length.plus(step.half()).snappedDown(step);
  }

  /** Whether {@link #number} says the length to the last nanometre. */
  public boolean isExact(Length length) {
    return unit == Unit.MM || length.nanometres() % NM_PER_64TH == 0;
  }

  private static String fraction(long sixtyFourths) {
    long size = Math.abs(sixtyFourths);
    long whole = size / 64;
    long numerator = size % 64;
    long denominator = 64;
    while (numerator != 0 && numerator % 2 == 0) {
      numerator /= 2;
      denominator /= 2;
    }
    String sign = sixtyFourths < 0 ? "-" : "";
    if (numerator == 0) {
      return sign + whole;
    }
    String part = numerator + "/" + denominator;
    return whole == 0 ? sign + part : sign + whole + " " + part;
  }
}
