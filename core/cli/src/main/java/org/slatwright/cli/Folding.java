package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;

/** Folds text at the width of a terminal, between words; a word that is longer stays whole. */
final class Folding {

  static final int WIDTH = 80;

  /** Between words, but not between a number and its fraction or its unit. */
  private static final String BREAK =
      "\\s+(?!\\d+/\\d|(?<=\\d\\s)(?:mm|cm|m|in|kg|g|oz|lb|lbf|N|MPa|psi|%)(?![\\w-]))";

  private Folding() {}

  /** {@code text} as lines that begin with {@code first}, and with {@code next} from the second. */
  static List<String> lines(String first, String next, String text) {
    return lines(first, next, words(text));
  }

  /** The words of {@code text}, a number and its unit being one. */
  static List<String> words(String text) {
    return List.of(text.strip().split(BREAK));
  }

  /** Words, each kept on one line even if it has blanks in it. */
  static List<String> lines(String first, String next, List<String> words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean fresh = true;
    for (String word : words) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(next);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
