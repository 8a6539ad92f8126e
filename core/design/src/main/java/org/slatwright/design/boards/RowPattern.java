package org.slatwright.design.boards;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Slats that close a row: so many whole pieces of some kinds, and strips, all of one width, that
 * are ripped from wider pieces or still to be found.
 *
 * @param kinds of the whole pieces, each once, by index
 * @param counts of each of those kinds
 * @param pieces how many they are
 * @param width of them in all, in nm
 * @param thinnest of them; more than {@code thickest} when there are none
 * @param thickest of them
 * @param strips how many
 * @param leastStrip width of a strip with which the row closes, in nm
 * @param mostStrip width of a strip with which the row closes, in nm
 */
record RowPattern(
    int[] kinds,
    int[] counts,
    int pieces,
    long width,
    long thinnest,
    long thickest,
    int strips,
    long leastStrip,
    long mostStrip) {

  static final RowPattern EMPTY =
      new RowPattern(new int[0], new int[0], 0, 0, Long.MAX_VALUE, Long.MIN_VALUE, 0, 0, 0);

  /**
   * Of whole pieces.
   *
   * @param pieces the kind of each, in rising order
   */
  static RowPattern of(Stock stock, List<Integer> pieces) {
    RowPattern pattern = EMPTY;
    int from = 0;
    while (from < pieces.size()) {
      int kind = pieces.get(from);
      int to = pieces.lastIndexOf(kind) + 1;
      pattern = pattern.with(kind, stock.kinds().get(kind), to - from);
      from = to;
    }
    return pattern;
  }

  RowPattern with(int kind, Kind of, int count) {
    return new RowPattern(
        append(kinds, kind),
        append(counts, count),
        pieces + count,
        width + count * of.width(),
        Math.min(thinnest, of.thickness()),
        Math.max(thickest, of.thickness()),
        0,
        0,
        0);
  }

  RowPattern withStrips(int many, long least, long most) {
    return new RowPattern(kinds, counts, pieces, width, thinnest, thickest, many, least, most);
  }

  /** The kind of each whole piece, in rising order. */
  List<Integer> pieceKinds() {
    return IntStream.range(0, kinds.length)
        .boxed()
        .flatMap(i -> Collections.nCopies(counts[i], kinds[i]).stream())
        .toList();
  }

  /** Slats in all. */
  int slats() {
    return pieces + strips;
  }

  /** The width of a strip that closes the row and is nearest to the one wished for. */
  long stripNear(long wished) {
    return Math.max(leastStrip, Math.min(mostStrip, wished));
  }

  /** How much the whole pieces differ in thickness. */
  long spread() {
    return pieces == 0 ? 0 : thickest - thinnest;
  }

  private static int[] append(int[] to, int value) {
    int[] longer = Arrays.copyOf(to, to.length + 1);
    longer[to.length] = value;
    return longer;
  }
}
