package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;

/**
 * A sentence with lengths in it, to be said in any unit.
 *
 * @param words with {@code {}} where each length goes
 * @param lengths as many as there are {@code {}}
 */
public record Wording(String words, List<Length> lengths) {

  private static final String GAP = "{}";

  public Wording {
    lengths = List.copyOf(lengths);
    int gaps = words.split("\\{}", -1).length - 1;
    if (gaps != lengths.size()) {
      throw new IllegalArgumentException(lengths.size() + " lengths for: " + words);
    }
  }

  /** A sentence with those lengths in it. */
  public static Wording of(String words, Length... lengths) {
    return new Wording(words, List.of(lengths));
  }

  /** The sentence with its lengths spelt so. */
  public String in(LengthFormat format) {
    StringBuilder said = new StringBuilder();
    int from = 0;
    for (Length length : lengths) {
      int gap = words.indexOf(GAP, from);
      said.append(words, from, gap).append(format.withUnit(length));
      from = gap + GAP.length();
    }
    return said.append(words.substring(from)).toString();
  }
}
