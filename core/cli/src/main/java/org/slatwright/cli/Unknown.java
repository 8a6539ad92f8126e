package org.slatwright.cli;

import java.util.List;
import java.util.Optional;
import org.slatwright.design.rackfile.NearestKey;

/** Says that a word is not known, which are, and which was perhaps meant. */
final class Unknown {

  private Unknown() {}

  /**
   * {@code there is no format svgg; did you mean svg? Known: csv, dxf, svg}.
   *
   * @param missing what the word follows, such as {@code there is no format}
   */
  static String message(String missing, String written, List<String> known) {
    String word = written.isEmpty() ? "\"\"" : written;
    return missing + " " + word + choice(written, known);
  }

  private static String choice(String written, List<String> known) {
    if (known.isEmpty()) {
      return "; there are none";
    }
    Optional<String> meant = NearestKey.to(written, known);
    String guess = meant.map(word -> "; did you mean " + word + "? Known: ").orElse("; known: ");
    return guess + String.join(", ", known);
  }
}
