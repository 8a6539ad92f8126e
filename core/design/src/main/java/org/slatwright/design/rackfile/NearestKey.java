package org.slatwright.design.rackfile;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Guesses which key, or other known word, a maker meant. */
public final class NearestKey {

  private NearestKey() {}

  /**
   * The known key that {@code written} is most likely a slip of, or empty when none is near. Case,
   * hyphens, underscores and blanks do not count; two letters swapped count as one slip.
   */
  public static Optional<String> to(String written, Collection<String> known) {
    return nearest(written, known, key -> 1 + key.length() / 4);
  }

  /** The known key that is at most one slip away. */
  static Optional<String> oneSlipFrom(String written, Collection<String> known) {
    return nearest(written, known, key -> 1);
  }

  private static Optional<String> nearest(
      String written, Collection<String> known, ToIntFunction<String> most) {
    String plain = plain(written);
    return known.stream()
        .filter(key -> distance(plain, plain(key)) <= most.applyAsInt(key))
        .min(Comparator.comparingInt(key -> distance(plain, plain(key))));
  }

  private static String plain(String key) {
    String start = key.length() > 40 ? key.substring(0, 40) : key;
    return start.toLowerCase(Locale.ROOT).replaceAll("[-_ ]", "");
  }

  /** Optimal string alignment: letters added, dropped, changed, or swapped with the next. */
  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    boolean same = a.charAt(i - 1) == b.charAt(j - 1);
    int best = d[i - 1][j - 1] + (same ? 0 : 1);
    best = Math.min(best, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
