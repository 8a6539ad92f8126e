package org.slatwright.design.cuttingstock;

import java.util.Arrays;

/**
 * A way to cut a stock length, or a piece that is missing.
 *
 * @param stock its index in the job, or {@link #MISSING}
 * @param kinds the kinds of piece it holds, in their order
 * @param counts how many of each, at least 1
 */
record Pattern(int stock, int[] kinds, int[] counts) {

  static final int MISSING = -1;

  /** A pattern with so many of each kind. */
  static Pattern of(int stock, int[] pieces) {
    int size = 0;
    for (int n : pieces) {
      size += n > 0 ? 1 : 0;
    }
    int[] kinds = new int[size];
    int[] counts = new int[size];
    int at = 0;
    for (int i = 0; i < pieces.length; i++) {
      if (pieces[i] > 0) {
        kinds[at] = i;
        counts[at++] = pieces[i];
      }
    }
    return new Pattern(stock, kinds, counts);
  }

  /** A piece of that kind that is missing. */
  static Pattern missing(int kind) {
    return new Pattern(MISSING, new int[] {kind}, new int[] {1});
  }

  long price(Job job) {
    return stock == MISSING ? job.missingPrice : job.price[stock];
  }

  /** The sum of what its pieces are worth. */
  long worth(long[] worth) {
    long sum = 0;
    for (int e = 0; e < kinds.length; e++) {
      sum += worth[kinds[e]] * counts[e];
    }
    return sum;
  }

  /** How often it may be used at most before it cuts nothing that is wanted. */
  int most(Job job) {
    int most = 0;
    for (int e = 0; e < kinds.length; e++) {
      most = Math.max(most, (job.demand[kinds[e]] + counts[e] - 1) / counts[e]);
    }
    return stock == MISSING ? most : Math.min(most, job.available[stock]);
  }

  /** Whether it holds a piece of each kind, two pieces where both are one kind. */
  boolean holds(int one, int other) {
    int at = Arrays.binarySearch(kinds, one);
    return at >= 0 && (one == other ? counts[at] > 1 : Arrays.binarySearch(kinds, other) >= 0);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pattern p
        && stock == p.stock
        && Arrays.equals(kinds, p.kinds)
        && Arrays.equals(counts, p.counts);
  }

  @Override
  public int hashCode() {
    return (Arrays.hashCode(kinds) * 31 + Arrays.hashCode(counts)) * 31 + stock;
  }
}
