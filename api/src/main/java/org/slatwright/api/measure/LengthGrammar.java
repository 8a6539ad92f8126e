package org.slatwright.api.measure;

import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a length as a maker writes it: {@code 44}, {@code 44 mm}, {@code 4.4 cm}, {@code 1.2 m},
 * {@code 1 3/4 in}, {@code 1-3/4"}, {@code 4' 6 1/2"}, {@code 54in}, {@code 6 ft}. A bare number is
 * in the unit given. Only what is exact is a length: thirds of an inch, or more digits than a
 * nanometre holds, are not.
 *
 * @param bareUnit the unit of a number that names none
 */
public record LengthGrammar(Unit bareUnit) {

  /** The forms that {@link #read} takes, to show beside one that it does not. */
  public static final String FORMS =
      "44, 44 mm, 4.4 cm, 1.2 m, 1 3/4 in, 1-3/4\", 4' 6 1/2\", 6 ft";

  private static final int LONGEST_TEXT = 40;
  private static final String NUMBER =
      "(?:(?<whole>\\d+)[ -])?(?<over>\\d+)/(?<under>\\d+)|(?<decimal>\\d+(?:\\.\\d+)?)";
  private static final Pattern PLAIN =
      Pattern.compile("(?:" + NUMBER + ") *(?<unit>mm|cm|m|in|ft|\"|'|)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(?<feet>\\d+) *(?:'|ft) *-? *(?:" + NUMBER + ") *(?:\"|in)");

  /** The length that {@code text} says, or empty when it says none exactly. Never negative. */
  public Optional<Length> read(String text) {
    String plain =
        text.strip().replace('″', '"').replace('′', '\'').replace('”', '"').replace('’', '\'');
    if (plain.length() > LONGEST_TEXT) {
      return Optional.empty();
    }
    Matcher both = FEET_AND_INCHES.matcher(plain);
    if (both.matches()) {
      Ratio inches =
          Ratio.of(both).plus(new BigInteger(both.group("feet")).multiply(BigInteger.valueOf(12)));
      return inches.times(Unit.INCH.nanometres());
    }
    Matcher one = PLAIN.matcher(plain);
    return one.matches() ? Ratio.of(one).times(nanometres(one.group("unit"))) : Optional.empty();
  }

  private long nanometres(String unit) {
    return switch (unit) {
      case "mm" -> Unit.MM.nanometres();
      case "cm" -> 10 * Unit.MM.nanometres();
      case "m" -> 1000 * Unit.MM.nanometres();
      case "in", "\"" -> Unit.INCH.nanometres();
      case "ft", "'" -> 12 * Unit.INCH.nanometres();
      default -> bareUnit.nanometres();
    };
  }

  private record Ratio(BigInteger over, BigInteger under) {

    static Ratio of(Matcher number) {
      String decimal = number.group("decimal");
      if (decimal != null) {
        int point = decimal.indexOf('.');
        int places = point < 0 ? 0 : decimal.length() - point - 1;
        return new Ratio(new BigInteger(decimal.replace(".", "")), BigInteger.TEN.pow(places));
      }
      Ratio fraction =
          new Ratio(new BigInteger(number.group("over")), new BigInteger(number.group("under")));
      String whole = number.group("whole");
      return whole == null ? fraction : fraction.plus(new BigInteger(whole));
    }

    Ratio plus(BigInteger whole) {
      return new Ratio(over.add(whole.multiply(under)), under);
    }

    Optional<Length> times(long nanometres) {
      if (under.signum() == 0) {
        return Optional.empty();
      }
      BigInteger[] nm = over.multiply(BigInteger.valueOf(nanometres)).divideAndRemainder(under);
      boolean exact = nm[1].signum() == 0 && nm[0].bitLength() < Long.SIZE;
      return exact ? Optional.of(new Length(nm[0].longValueExact())) : Optional.empty();
    }
  }
}
