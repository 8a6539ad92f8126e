package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Boards of one width and thickness. However they are cut, their slats are alike, so that a choice
 * only has to count them: how many of each length. For every such count this knows whether the
 * boards give it, and how little is wasted when they do.
 */
final class Kind {

  /** The cost of a count that the boards do not give. */
  static final long NONE = Long.MAX_VALUE;

  /** Cost is wasted µm² times this, plus the boards cut into. */
  private static final long AREA = 1024;

  private static final long NM_PER_MICROMETRE = 1000;

  /**
   * Boards that are cut in one way.
   *
   * @param board its index among all boards
   */
  record Cut(int board, BoardCut cut) {}

  private final long width;
  private final long thickness;
  private final int[] boards;
  private final List<List<BoardCut>> cuts;
  private final int[] most;
  private final int[] stride;

  /** After each board: the least cost of each count, by its index. */
  private final long[][] cost;

  /** The least cost of that count or one with more of anything. */
  private final long[] costFrom;

  /**
   * @param boards by their index among all
   * @param cuts of each of those boards
   * @param most slats of each length that could be of use, or that the boards could give
   */
  Kind(long width, long thickness, int[] boards, List<List<BoardCut>> cuts, int[] most) {
    this.width = width;
    this.thickness = thickness;
    this.boards = boards;
    this.cuts = cuts;
    this.most = most;
    this.stride = new int[most.length];
    int size = 1;
    for (int i = 0; i < most.length; i++) {
      stride[i] = size;
      size *= most[i] + 1;
    }
    this.cost = new long[boards.length + 1][];
    cost[0] = new long[size];
    Arrays.fill(cost[0], NONE);
    cost[0][0] = 0;
    for (int b = 0; b < boards.length; b++) {
      cost[b + 1] = with(cuts.get(b), cost[b]);
    }
    this.costFrom = costFrom();
  }

  long width() {
    return width;
  }

  long thickness() {
    return thickness;
  }

  int boardCount() {
    return boards.length;
  }

  /** How many slats of a length there are at most, by the length's index. */
  int most(int length) {
    return most[length];
  }

  /** What to add to the index of a count for one more slat of a length. */
  int stride(int length) {
    return stride[length];
  }

  /** Whether the boards give that count. */
  boolean gives(int[] count) {
    int at = 0;
    for (int i = 0; i < most.length; i++) {
      if (count[i] > most[i]) {
        return false;
      }
      at += count[i] * stride[i];
    }
    return cost[boards.length][at] != NONE;
  }

  /** The least waste of boards that give that count. */
  long cost(int[] count) {
    return cost[boards.length][indexOf(count)];
  }

  /** The least waste of boards that give that count or more. */
  long costFrom(int[] count) {
    return costFrom[indexOf(count)];
  }

  /** Which boards give that count, and how, with the least waste; those cut into alone. */
  List<Cut> cut(int[] count) {
    List<Cut> chosen = new ArrayList<>();
    int at = indexOf(count);
    for (int b = boards.length; b > 0; b--) {
      BoardCut cut = cheapest(b, at);
      at -= offset(cut);
      if (!cut.isUncut()) {
        chosen.add(0, new Cut(boards[b - 1], cut));
      }
    }
    return chosen;
  }

  private BoardCut cheapest(int b, int at) {
    for (BoardCut cut : cuts.get(b - 1)) {
      if (isWithin(cut, at)) {
        long before = cost[b - 1][at - offset(cut)];
        if (before != NONE && before + costOf(cut) == cost[b][at]) {
          return cut;
        }
      }
    }
    throw new IllegalStateException("the boards do not give that count");
  }

  private long[] with(List<BoardCut> options, long[] before) {
    long[] after = new long[before.length];
    Arrays.fill(after, NONE);
    for (BoardCut cut : options) {
      int offset = offset(cut);
      long more = costOf(cut);
      for (int at = offset; at < after.length; at++) {
        if (isWithin(cut, at) && before[at - offset] != NONE) {
          after[at] = Math.min(after[at], before[at - offset] + more);
        }
      }
    }
    return after;
  }

  /** Whether that count has as many of each length as the cut gives. */
  private boolean isWithin(BoardCut cut, int at) {
    for (int i = 0; i < most.length; i++) {
      if (at / stride[i] % (most[i] + 1) < cut.counts().get(i)) {
        return false;
      }
    }
    return true;
  }

  private int offset(BoardCut cut) {
    int offset = 0;
    for (int i = 0; i < most.length; i++) {
      offset += cut.counts().get(i) * stride[i];
    }
    return offset;
  }

  private long costOf(BoardCut cut) {
    long area = (width / NM_PER_MICROMETRE) * (cut.wasted() / NM_PER_MICROMETRE);
    return cut.isUncut() ? 0 : area * AREA + 1;
  }

  private long[] costFrom() {
    long[] least = cost[boards.length].clone();
    for (int i = 0; i < most.length; i++) {
      for (int at = least.length - 1; at >= 0; at--) {
        if (at / stride[i] % (most[i] + 1) < most[i]) {
          least[at] = Math.min(least[at], least[at + stride[i]]);
        }
      }
    }
    return least;
  }

  private int indexOf(int[] count) {
    int at = 0;
    for (int i = 0; i < most.length; i++) {
      at += count[i] * stride[i];
    }
    return at;
  }
}
