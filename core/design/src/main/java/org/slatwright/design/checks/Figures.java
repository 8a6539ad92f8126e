package org.slatwright.design.checks;

import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.mechanics.InchPound;

/**
 * Spells reckoned numbers for the maker, metric or inch, with as many digits as they deserve. The
 * same on every machine: no locale.
 */
record Figures(LengthFormat lengths) {

  private static final double NMM_PER_LBF_FT = InchPound.N_PER_LBF * 12 * InchPound.MM_PER_INCH;
  private static final double MPA_PER_PSI =
      InchPound.N_PER_LBF / (InchPound.MM_PER_INCH * InchPound.MM_PER_INCH);

  private Unit unit() {
    return lengths.unit();
  }

  /** A length that is cut or measured: {@code 44 mm}, {@code 1 3/4"}. */
  String length(Length length) {
    return lengths.withUnit(length);
  }

  /** A distance that the maker measures, in mm: {@code 27 mm}, {@code 1 1/16"}. */
  Measure measured() {
    return new Measured(unit());
  }

  /** A bit, or a distance as small, in mm: {@code 1.6 mm}, {@code 1/16"}, to 64ths. */
  String bit(double mm) {
    return measured().told(mm, 1);
  }

  /** A distance that nobody measures, in mm: {@code 3.2 mm}, {@code 0.13"}. */
  Measure distance() {
    return unit()
        .metricOrInch(
            new Significant(1, " mm", "", 2, 0.1),
            new Significant(InchPound.MM_PER_INCH, "\"", "", 2, 0.01));
  }

  String distance(double mm) {
    return distance().told(mm);
  }

  /** A force, in N: {@code 89 N}, {@code 32 kN}, {@code 20 lbf}. */
  Measure force() {
    return unit()
        .metricOrInch(
            new Significant(1, " N", " kN", 2, 1),
            new Significant(InchPound.N_PER_LBF, " lbf", "", 2, 1));
  }

  String force(double newtons) {
    return force().told(newtons);
  }

  /** A moment, in N·mm: {@code 27 N·m}, {@code 20 lbf·ft}. */
  Measure moment() {
    return unit()
        .metricOrInch(
            new Significant(1000, " N·m", " kN·m", 2, 0.1),
            new Significant(NMM_PER_LBF_FT, " lbf·ft", "", 2, 0.1));
  }

  /** A stress, in MPa: {@code 8.6 MPa}, {@code 1250 psi}. */
  Measure stress() {
    return unit()
        .metricOrInch(
            new Significant(1, " MPa", "", 2, 0.1),
            new Significant(MPA_PER_PSI, " psi", "", 3, 10));
  }

  /** In degrees: {@code 9.8°}. */
  Measure angle() {
    return new Significant(1, "°", "", 2, 0.1);
  }

  /** A number without a unit. */
  Measure ratio() {
    return new Significant(1, "", "", 2, 0);
  }

  String number(double value) {
    return ratio().told(value);
  }

  String mass(Mass mass) {
    return mass.withUnit(unit());
  }
}
