package org.slatwright.design.checks;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;

/**
 * Spells reckoned numbers for the maker, metric or inch, with as many digits as they deserve. The
 * same on every machine: no locale.
 */
record Figures(Unit unit) {

  private static final double MM_PER_INCH = 25.4;

  /** Exact: the pound of 1959 under standard gravity. */
  static final double N_PER_LBF = 4.4482216152605;

  private static final double NMM_PER_LBF_FT = N_PER_LBF * 12 * MM_PER_INCH;
  private static final double MPA_PER_PSI = N_PER_LBF / (MM_PER_INCH * MM_PER_INCH);
  private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);
  private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_UP);

  /** A length that is cut or measured: {@code 44 mm}, {@code 1 3/4"}. */
  String length(Length length) {
    return new LengthFormat(unit).withUnit(length);
  }

  /** A reckoned distance, in mm: {@code 3.2 mm}, {@code 0.13"}. */
  String distance(double mm) {
    return unit == Unit.MM
        ? number(mm, TWO_DIGITS) + " mm"
        : number(mm / MM_PER_INCH, TWO_DIGITS) + "\"";
  }

  /** A force, in N: {@code 89 N}, {@code 20 lbf}. */
  String force(double newtons) {
    return unit == Unit.MM
        ? number(newtons, TWO_DIGITS) + " N"
        : number(newtons / N_PER_LBF, TWO_DIGITS) + " lbf";
  }

  /** A moment, in N·mm: {@code 27 N·m}, {@code 20 lbf·ft}. */
  String moment(double newtonMillimetres) {
    return unit == Unit.MM
        ? number(newtonMillimetres / 1000, TWO_DIGITS) + " N·m"
        : number(newtonMillimetres / NMM_PER_LBF_FT, TWO_DIGITS) + " lbf·ft";
  }

  /** A stress, in MPa: {@code 8.6 MPa}, {@code 1250 psi}. */
  String stress(double mpa) {
    return unit == Unit.MM
        ? number(mpa, TWO_DIGITS) + " MPa"
        : number(mpa / MPA_PER_PSI, THREE_DIGITS) + " psi";
  }

  String mass(Mass mass) {
    return mass.withUnit(unit);
  }

  /** A ratio or an angle without its unit, to two digits. */
  String number(double value) {
    return number(value, TWO_DIGITS);
  }

  private static String number(double value, MathContext digits) {
    BigDecimal exact = BigDecimal.valueOf(value);
    boolean large = exact.abs().compareTo(BigDecimal.TEN.pow(digits.getPrecision())) >= 0;
    BigDecimal shown =
        large ? exact.setScale(0, RoundingMode.HALF_UP) : exact.round(digits).stripTrailingZeros();
    return shown.signum() == 0 ? "0" : shown.toPlainString();
  }
}
