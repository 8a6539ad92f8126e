package org.slatwright.design.boards;

import java.util.Comparator;

/**
 * What a choice of so many rows, with so many slats ripped, is worth; the least is the best. Waste
 * counts first: any gap within the range is one that the maker will have, and wood that is cut into
 * is gone.
 *
 * @param cost of the boards that are cut into, as {@link Kind} reckons it
 * @param gapsOff how far the gaps are from the middle, all rows together. Squares are summed: a
 *     shelf that is far off counts more than two a little off, so that shelves come out alike.
 * @param spread of thickness, all rows together
 */
record Worth(long cost, long gapsOff, long spread) implements Comparable<Worth> {

  private static final Comparator<Worth> LEAST =
      Comparator.comparingLong(Worth::cost)
          .thenComparingLong(Worth::gapsOff)
          .thenComparingLong(Worth::spread);

  @Override
  public int compareTo(Worth other) {
    return LEAST.compare(this, other);
  }
}
