package org.slatwright.cli;

import java.util.List;
import java.util.Optional;
import org.slatwright.design.rackfile.NearestKey;

/** Says that a word is not known, which are, and which was perhaps meant. */
final class Unknown {

  private Unknown() {}

  /** {@code there is no format svgg; did you mean svg? Known: csv, dxf, svg}. */
  static String message(String what, String written, List<String> known) {
    Optional<String> meant = NearestKey.to(written, known);
    String guess = meant.map(word -> "; did you mean " + word + "?").orElse(";");
    String choice = known.isEmpty() ? " there are none" : " Known: " + String.join(", ", known);
    return "there is no " + what + " " + written + guess + choice;
  }
}
