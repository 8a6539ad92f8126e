package org.slatwright.design.rackfile;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthGrammar;

/**
 * Reads two lengths with something between them: a section {@code 44 x 70} or a range {@code
 * 3..20}. A unit on one of them alone counts for both: {@code 1 1/2 x 3 1/2 in}.
 */
record PairGrammar(LengthGrammar lengths, Pattern between) {

  /** Between the two sizes of a section. */
  static final Pattern TIMES = Pattern.compile("[x×X]");

  /** Between the two ends of a range. */
  static final Pattern TO = Pattern.compile("\\.\\.");

  private static final Pattern BARE = Pattern.compile("[\\d ./-]+");
  private static final Pattern UNIT = Pattern.compile("(?:mm|cm|m|in|ft|[\"″”'′’])$");

  /** Two lengths, as written. */
  record Pair(Length first, Length second) {}

  /** The pair that {@code text} says, or empty. */
  Optional<Pair> read(String text) {
    String[] sides = between.split(text, -1);
    if (sides.length != 2) {
      return Optional.empty();
    }
    String left = sides[0].strip();
    String right = sides[1].strip();
    Optional<Length> first = lengths.read(left + unitFor(left, right));
    Optional<Length> second = lengths.read(right + unitFor(right, left));
    return first.flatMap(a -> second.map(b -> new Pair(a, b)));
  }

  private static String unitFor(String side, String other) {
    Matcher unit = UNIT.matcher(other);
    return BARE.matcher(side).matches() && unit.find() ? unit.group() : "";
  }
}
