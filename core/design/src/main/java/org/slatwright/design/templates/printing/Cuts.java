package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a draft is cut along one axis so that every part has room on a page. Parts that follow one
 * another share {@link #OVERLAP_MM}; the later one is laid over the earlier. Cuts lie on whole
 * millimetres.
 *
 * <p>Of all ways the one that costs least is found, by dynamic programming from the far end: a disc
 * in an overlap costs more than another part, since a hole should be marked from one sheet; else
 * the fewest parts; then the fewest texts cut through; then the longest parts first.
 */
final class Cuts {

  /** What two neighbouring parts both show (common practice, no source). */
  static final int OVERLAP_MM = 10;

  /** Between an overlap and a disc, and between a trim line and a text. */
  private static final int CLEAR_MM = 1;

  /** What each part shows at least that none before it does. */
  private static final int LEAST_MM = 20;

  private static final long A_PART = 1_000_000;
  private static final long A_DISC = 1_500_000;
  private static final long A_TEXT = 1;
  private static final int NONE = -1;

  private final double length;
  private final double most;

  /** What it costs that the overlap starts there. */
  private final long[] cost;

  private Cuts(double length, double most) {
    this.length = length;
    this.most = most;
    this.cost = new long[(int) Math.floor(length - OVERLAP_MM - LEAST_MM) + 1];
  }

  /**
   * The parts of {@code length}, in order; the overlap of one with the next starts where the next
   * does, and there the next is trimmed.
   *
   * @param most of a part, at least 100
   * @param discs what no overlap should come near
   * @param texts what should be seen whole when the next part lies over the one before
   */
  static List<Stretch> of(double length, double most, List<Stretch> discs, List<Stretch> texts) {
    if (length <= most) {
      return List.of(new Stretch(0, length));
    }
    Cuts cuts = new Cuts(length, most);
    discs.forEach(
        disc -> cuts.addCost(disc.from() - OVERLAP_MM - CLEAR_MM, disc.to() + CLEAR_MM, A_DISC));
    texts.forEach(text -> cuts.addCost(text.from() - CLEAR_MM, text.to() + CLEAR_MM, A_TEXT));
    return cuts.cheapest();
  }

  /** To every cut between the two places. */
  private void addCost(double after, double before, long each) {
    int first = (int) Math.max(0, Math.floor(after) + 1);
    for (int at = first; at < before && at < cost.length; at++) {
      cost[at] += each;
    }
  }

  private List<Stretch> cheapest() {
    long[] least = new long[cost.length];
    int[] next = new int[cost.length];
    for (int at = cost.length - 1; at >= 0; at--) {
      next[at] = NONE;
      if (length - at > most) {
        next[at] = cheapestAfter(at, least);
        least[at] = A_PART + cost[next[at]] + least[next[at]];
      }
    }
    return parts(next);
  }

  private int cheapestAfter(int at, long[] least) {
    int farthest = Math.min((int) Math.floor(at + most - OVERLAP_MM), cost.length - 1);
    int best = farthest;
    for (int cut = farthest - 1; cut >= at + LEAST_MM; cut--) {
      if (cost[cut] + least[cut] < cost[best] + least[best]) {
        best = cut;
      }
    }
    return best;
  }

  private List<Stretch> parts(int[] next) {
    List<Stretch> parts = new ArrayList<>();
    int at = 0;
    for (; next[at] != NONE; at = next[at]) {
      parts.add(new Stretch(at, next[at] + OVERLAP_MM));
    }
    parts.add(new Stretch(at, length));
    return parts;
  }
}
