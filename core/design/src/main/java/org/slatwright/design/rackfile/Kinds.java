package org.slatwright.design.rackfile;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthGrammar;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;

/** The kinds of values that a rack file holds, with the limits of good sense. */
final class Kinds {

  static final Length LEAST = Length.mm(1);

  /** The thinnest cut or shank there is. */
  static final Length FINEST = new Length(50_000);

  private static final Length MOST = Length.mm(20_000);
  private static final Length COARSEST_INCREMENT = Length.mm(100);
  private static final String SECTION_FORMS = "44 x 70, 44 x 70 mm or 1 1/2 x 3 1/2 in";
  private static final String RANGE_FORMS = "3..20, 3..20 mm or 1/8..3/4 in";
  private static final String PRICE_FORMS = "a number such as 5.90, in one currency throughout";
  private static final Pattern COUNT = Pattern.compile("\\d{1,9}");
  private static final Pattern PRICE = Pattern.compile("\\d{1,7}(\\.\\d{1,4})?");
  private static final Pattern MASS = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?) *(kg|g|lb)");
  private static final long MOST_GRAMS = 10_000_000;

  private static final Pattern NEGATIVE = Pattern.compile("[-\u2212] *\\d.*");
  private static final Pattern FRACTION = Pattern.compile(".*\\d/\\d.*");
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("\\d{1,9},\\d{1,9} *(?:mm|cm|m|in|\"|kg|g|lb)?");

  private final LengthGrammar grammar;

  Kinds(Unit units) {
    this.grammar = new LengthGrammar(units);
  }

  /** From 1 mm to 20 m. */
  Kind<Length> length() {
    return length(LEAST, MOST);
  }

  /** From nothing to 20 m. */
  Kind<Length> lengthOrNone() {
    return length(Length.ZERO, MOST);
  }

  /** From nothing to 1 in: with more, the rules that prove the scale have no room on a page. */
  Kind<Length> printMargin() {
    return length(Length.ZERO, Length.inches(1, 1));
  }

  /** The width of a cut, a bit or a shank: from 0.05 mm to 1 in. */
  Kind<Length> fineLength() {
    return length(FINEST, Length.inches(1, 1));
  }

  /** What solved lengths snap to. */
  Kind<Length> increment() {
    return length(FINEST, COARSEST_INCREMENT);
  }

  private Kind<Length> length(Length least, Length most) {
    return new Kind<>(
        LengthGrammar.FORMS,
        LEAST,
        text -> within(least, most, grammar.read(text).orElseThrow(() -> notA("length", text))));
  }

  private static Length within(Length least, Length most, Length length) throws Unreadable {
    if (length.isLessThan(least)) {
      throw new Unreadable("is too small", "write at least " + least);
    }
    if (length.isMoreThan(most)) {
      throw new Unreadable("is too large", "write at most " + most);
    }
    return length;
  }

  /** Two sizes of a piece of stock, each from 1 mm to 20 m. */
  Kind<Section> section() {
    PairGrammar pairs = new PairGrammar(grammar, PairGrammar.TIMES);
    return new Kind<>(
        SECTION_FORMS,
        new Section(LEAST, LEAST),
        text -> {
          PairGrammar.Pair pair = pairs.read(text).orElseThrow(() -> notA("section", text));
          return new Section(within(LEAST, MOST, pair.first()), within(LEAST, MOST, pair.second()));
        });
  }

  /** From one length to another, both from nothing to 20 m. */
  Kind<RackFile.Range> range() {
    PairGrammar pairs = new PairGrammar(grammar, PairGrammar.TO);
    return new Kind<>(
        RANGE_FORMS,
        new RackFile.Range(Length.ZERO, LEAST),
        text -> {
          PairGrammar.Pair pair = pairs.read(text).orElseThrow(() -> notA("range", text));
          if (pair.first().isMoreThan(pair.second())) {
            throw new Unreadable("runs backwards", "write the smaller length first");
          }
          return new RackFile.Range(pair.first(), within(Length.ZERO, MOST, pair.second()));
        });
  }

  /** A whole number. */
  static Kind<Integer> count(int least, int most) {
    String all = "a whole number from " + least + " to " + most;
    String forms = most == least + 1 ? least + " or " + most : all;
    return new Kind<>(
        forms,
        least,
        text -> {
          if (!COUNT.matcher(text).matches()) {
            throw new Unreadable("is not a count");
          }
          int count = Integer.parseInt(text);
          if (count < least || count > most) {
            throw new Unreadable("is out of range");
          }
          return count;
        });
  }

  /** A sum of money, without a currency. */
  static Kind<BigDecimal> price() {
    return new Kind<>(
        PRICE_FORMS,
        BigDecimal.ZERO,
        text -> {
          if (!PRICE.matcher(text).matches()) {
            throw notA("price", text);
          }
          return new BigDecimal(text);
        });
  }

  /** A mass with its unit, rounded to whole grams. */
  static Kind<Mass> mass() {
    String forms = "15 kg, 800 g or 30 lb";
    return new Kind<>(
        forms,
        new Mass(1),
        text -> {
          Matcher matcher = MASS.matcher(text);
          if (!matcher.matches()) {
            throw notA("mass", text);
          }
          return grams(new BigDecimal(matcher.group(1)), matcher.group(2));
        });
  }

  private static Mass grams(BigDecimal number, String unit) throws Unreadable {
    BigDecimal each =
        switch (unit) {
          case "kg" -> Mass.gramsEach(Unit.MM);
          case "lb" -> Mass.gramsEach(Unit.INCH);
          default -> BigDecimal.ONE;
        };
    BigInteger grams = number.multiply(each).setScale(0, RoundingMode.HALF_UP).toBigInteger();
    if (grams.signum() == 0 || grams.compareTo(BigInteger.valueOf(MOST_GRAMS)) > 0) {
      throw new Unreadable("is out of range", "write 1 g to 10 000 kg");
    }
    return new Mass(grams.longValueExact());
  }

  /** One of a few words. */
  static <E> Kind<E> oneOf(E[] values, Function<E, String> word) {
    List<String> words = Arrays.stream(values).map(word).toList();
    String last = words.get(words.size() - 1);
    String forms = String.join(", ", words.subList(0, words.size() - 1)) + " or " + last;
    return new Kind<>(
        forms,
        values[0],
        text -> {
          int index = words.indexOf(text);
          if (index < 0) {
            throw new Unreadable("is not known here");
          }
          return values[index];
        });
  }

  /** A line of text. */
  static Kind<String> text(int most) {
    String forms = "a line of at most " + most + " characters";
    return new Kind<>(
        forms,
        "?",
        text -> {
          if (text.isBlank()) {
            throw new Unreadable("is blank");
          }
          if (text.codePointCount(0, text.length()) > most) {
            throw new Unreadable("is too long");
          }
          if (text.codePoints().anyMatch(Kinds::isInvisible)) {
            throw new Unreadable("holds a line break or an invisible character");
          }
          return text;
        });
  }

  private static boolean isInvisible(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  private static Unreadable notA(String kind, String text) {
    if (NEGATIVE.matcher(text).matches()) {
      return new Unreadable("may not be negative");
    }
    return new Unreadable("is not a " + kind, hint(text));
  }

  /** The likeliest slip, if one is likely. */
  private static String hint(String text) {
    if (DECIMAL_COMMA.matcher(text).matches()) {
      return "write a point, not a comma: " + text.replace(',', '.');
    }
    return FRACTION.matcher(text).matches()
        ? "write a fraction in halves, 4ths, 8ths … 64ths, such as 1 3/4 in, or a decimal"
        : "";
  }
}
