package org.slatwright.design.sizing;

import java.util.Arrays;
import java.util.Map;
import org.slatwright.api.measure.Length;

/**
 * How many slats of two lengths come out of clear stretches, a kerf between two: exactly, by the
 * most short ones that are left beside every number of long ones.
 *
 * @param longer at least as long as {@code shorter}
 * @param needed of each; more are not counted
 */
record SlatYield(Length longer, Length shorter, Length kerf, SlatYield.Count needed) {

  private static final int NONE = -1;

  /** How many of the longer slats and how many of the shorter. */
  record Count(int longer, int shorter) {
    int all() {
      return longer + shorter;
    }
  }

  /**
   * The fewest slats that are missing; where that leaves a choice, the fewest long ones.
   *
   * @param stretches how many there are of each length
   */
  Count missing(Map<Length, Integer> stretches) {
    long longerAlone =
        stretches.entrySet().stream()
            .mapToLong(alike -> alike.getValue() * pieces(alike.getKey(), longer))
            .sum();
    if (needed.shorter() == 0 || longerAlone >= needed.all()) {
      return new Count((int) Math.max(0, needed.longer() - longerAlone), 0);
    }
    return missingOfBoth(stretches);
  }

  private Count missingOfBoth(Map<Length, Integer> stretches) {
    int[] shorterBeside = new int[needed.longer() + 1];
    Arrays.fill(shorterBeside, NONE);
    shorterBeside[0] = 0;
    for (Map.Entry<Length, Integer> alike : stretches.entrySet()) {
      int useful = pieces(alike.getKey(), shorter) > 0 ? alike.getValue() : 0;
      for (int i = 0; i < useful && shorterBeside[needed.longer()] < needed.shorter(); i++) {
        shorterBeside = with(alike.getKey(), shorterBeside);
      }
    }
    return fewest(shorterBeside);
  }

  private int[] with(Length stretch, int[] before) {
    int[] after = before.clone();
    int most = (int) Math.min(needed.longer(), pieces(stretch, longer));
    for (int had = 0; had <= needed.longer(); had++) {
      for (int more = 0; more <= most && before[had] != NONE; more++) {
        int beside = before[had] + shorterBeside(stretch, more);
        int now = Math.min(needed.longer(), had + more);
        after[now] = Math.max(after[now], Math.min(needed.shorter(), beside));
      }
    }
    return after;
  }

  private int shorterBeside(Length stretch, int ofLonger) {
    Length left = stretch.minus(longer.plus(kerf).times(ofLonger));
    return (int) Math.min(needed.shorter(), pieces(left, shorter));
  }

  private long pieces(Length stretch, Length each) {
    return Fitting.pieces(stretch, each, kerf);
  }

  private Count fewest(int[] shorterBeside) {
    Count best = needed;
    for (int have = 0; have <= needed.longer(); have++) {
      if (shorterBeside[have] != NONE) {
        Count missing = new Count(needed.longer() - have, needed.shorter() - shorterBeside[have]);
        best = missing.all() <= best.all() ? missing : best;
      }
    }
    return best;
  }
}
