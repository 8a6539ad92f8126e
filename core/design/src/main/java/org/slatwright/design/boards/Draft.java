package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.List;

/** Rows chosen so far, and what they take of the stock. What is done can be undone, last first. */
final class Draft {

  /**
   * A row that closes.
   *
   * @param length of its slats, by index
   * @param strips which piece each is ripped from; empty when they are still to be found
   */
  record Row(int length, RowPattern pattern, List<Rips.Piece> strips) {
    /** Whether all its slats come from the boards. */
    boolean isFilled() {
      return strips.size() == pattern.strips();
    }
  }

  private final Stock stock;
  private final int[][] taken;
  private final List<Rips.Piece> ripped = new ArrayList<>();
  private long costFrom;

  Draft(Stock stock) {
    this.stock = stock;
    this.taken = new int[stock.kinds().size()][stock.lengths().size()];
    for (int kind = 0; kind < taken.length; kind++) {
      costFrom += kind(kind).costFrom(taken[kind]);
    }
  }

  Kind kind(int kind) {
    return stock.kinds().get(kind);
  }

  /** How many slats of each length are taken of a kind. */
  int[] taken(int kind) {
    return taken[kind];
  }

  List<Rips.Piece> ripped() {
    return ripped;
  }

  /** How many more slats of a length each kind gives. */
  int[] available(int length) {
    int[] available = new int[taken.length];
    for (int kind = 0; kind < taken.length; kind++) {
      int[] count = taken[kind].clone();
      count[length]++;
      while (kind(kind).gives(count)) {
        count[length]++;
      }
      available[kind] = count[length] - taken[kind][length] - 1;
    }
    return available;
  }

  /** The waste of what is taken. */
  long cost() {
    long sum = 0;
    for (int kind = 0; kind < taken.length; kind++) {
      sum += kind(kind).cost(taken[kind]);
    }
    return sum;
  }

  /** No choice that takes this and more wastes less. */
  long costFrom() {
    return costFrom;
  }

  /** Takes what a row needs that a search has found. */
  void fill(Row row) {
    take(row.pattern(), row.length());
    for (Rips.Piece piece : row.strips()) {
      if (!ripped.contains(piece)) {
        piece.clear();
        startRipping(piece);
      }
      piece.add(row.pattern().leastStrip());
    }
  }

  /** Whether the pieces were there; takes them when they were, and nothing otherwise. */
  boolean take(RowPattern pattern, int length) {
    for (int i = 0; i < pattern.kinds().length; i++) {
      if (!take(pattern.kinds()[i], length, pattern.counts()[i])) {
        for (int undone = i - 1; undone >= 0; undone--) {
          take(pattern.kinds()[undone], length, -pattern.counts()[undone]);
        }
        return false;
      }
    }
    return true;
  }

  void giveBack(RowPattern pattern, int length) {
    for (int i = 0; i < pattern.kinds().length; i++) {
      take(pattern.kinds()[i], length, -pattern.counts()[i]);
    }
  }

  boolean take(int kind, int length, int count) {
    int[] of = taken[kind];
    long before = kind(kind).costFrom(of);
    of[length] += count;
    if (!kind(kind).gives(of)) {
      of[length] -= count;
      return false;
    }
    costFrom += kind(kind).costFrom(of) - before;
    return true;
  }

  boolean startRipping(Rips.Piece piece) {
    return take(piece.kind, piece.length, 1) && ripped.add(piece);
  }

  void stopRipping() {
    Rips.Piece piece = ripped.remove(ripped.size() - 1);
    take(piece.kind, piece.length, -1);
  }
}
