package org.slatwright.api.measure;

/**
 * An exact length: a whole number of nanometres, so that 1/64 in (396 875 nm) and 0.001 mm are both
 * exact and a chain of them adds up to the last digit. May be negative (a shortfall, a coordinate).
 *
 * @param nanometres the length in nanometres
 */
public record Length(long nanometres) implements Comparable<Length> {

  /** No length at all. */
  public static final Length ZERO = new Length(0);

  private static final long NM_PER_MM = Unit.MM.nanometres();

  /** A whole number of millimetres. */
  public static Length mm(long millimetres) {
    return new Length(Math.multiplyExact(millimetres, NM_PER_MM));
  }

  /**
   * The whole number of nanometres nearest to a computed length. This is the one place where {@code
   * double} results (trigonometry, physics) come back into exact lengths.
   *
   * @param millimetres finite, in mm
   */
  public static Length roundedMm(double millimetres) {
    if (!Double.isFinite(millimetres)) {
      throw new IllegalArgumentException("a length must be finite, was " + millimetres);
    }
    return new Length(Math.round(millimetres * NM_PER_MM));
  }

  /**
   * A fraction of an inch.
   *
   * @throws ArithmeticException when it is not a whole number of nanometres
   */
  public static Length inches(long numerator, long denominator) {
    long nm = Math.multiplyExact(numerator, Unit.INCH.nanometres());
    if (nm % denominator != 0) {
      throw new ArithmeticException(numerator + "/" + denominator + " in is not exact");
    }
    return new Length(nm / denominator);
  }

  /** This plus {@code other}. */
  public Length plus(Length other) {
    return new Length(Math.addExact(nanometres, other.nanometres));
  }

  /** This less {@code other}. */
  public Length minus(Length other) {
    return new Length(Math.subtractExact(nanometres, other.nanometres));
  }

  /** This, {@code count} times. */
  public Length times(long count) {
    return new Length(Math.multiplyExact(nanometres, count));
  }

  /** An equal share, rounded down to a whole nanometre (towards negative infinity). */
  public Length dividedBy(long shares) {
    return new Length(Math.floorDiv(nanometres, shares));
  }

  /** {@code dividedBy(2)}: the distance from an edge to the middle. */
  public Length half() {
    return dividedBy(2);
  }

  /** The same length with the other sign. */
  public Length negated() {
    return new Length(Math.negateExact(nanometres));
  }

  /** The same length without its sign. */
  public Length abs() {
    return nanometres < 0 ? negated() : this;
  }

  /** The largest multiple of {@code increment} (greater than zero) that is not above this. */
  public Length snappedDown(Length increment) {
    return new Length(Math.floorDiv(nanometres, increment.nanometres) * increment.nanometres);
  }

  /** The smallest multiple of {@code increment} (greater than zero) that is not below this. */
  public Length snappedUp(Length increment) {
    return negated().snappedDown(increment).negated();
  }

  /** Whether this is a whole number of {@code increment}s. */
  public boolean isMultipleOf(Length increment) {
    return nanometres % increment.nanometres == 0;
  }

  /** How many whole {@code other}s go into this, rounded down. */
  public long wholeTimes(Length other) {
    return Math.floorDiv(nanometres, other.nanometres);
  }

  /** The longer of two. */
  public static Length max(Length a, Length b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  /** The shorter of two. */
  public static Length min(Length a, Length b) {
    return a.compareTo(b) <= 0 ? a : b;
  }

  /** Whether this is below zero. */
  public boolean isNegative() {
    return nanometres < 0;
  }

  /** Whether this is above zero. */
  public boolean isPositive() {
    return nanometres > 0;
  }

  /** Whether this is zero. */
  public boolean isZero() {
    return nanometres == 0;
  }

  /** Whether this is longer than {@code other}. */
  public boolean isMoreThan(Length other) {
    return nanometres > other.nanometres;
  }

  /** Whether this is shorter than {@code other}. */
  public boolean isLessThan(Length other) {
    return nanometres < other.nanometres;
  }

  /** In millimetres, for drawing and physics; never to cut by. */
  public double inMm() {
    return nanometres / (double) NM_PER_MM;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }

  /** In millimetres with every digit, such as {@code 37.6 mm}. */
  @Override
  public String toString() {
    return new LengthFormat(Unit.MM).withUnit(this);
  }
}
