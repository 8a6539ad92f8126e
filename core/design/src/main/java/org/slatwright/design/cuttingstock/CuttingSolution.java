package org.slatwright.design.cuttingstock;

import java.util.List;

/**
 * How the pieces are cut: no piece lost or doubled, no stock length over-filled.
 *
 * @param patterns every different way a stock length is cut, in a settled order
 * @param missing how many pieces of each demand no stock is left for, in the order of the demands;
 *     all 0 when everything is cut
 * @param cost of all stock lengths cut
 * @param lowerBound no plan that misses as few pieces costs less
 */
public record CuttingSolution(
    List<Pattern> patterns, List<Integer> missing, long cost, long lowerBound) {

  public CuttingSolution {
    patterns = List.copyOf(patterns);
    missing = List.copyOf(missing);
  }

  /** Whether no plan costs less. */
  public boolean isProved() {
    return cost == lowerBound;
  }

  /**
   * One way to cut a stock length.
   *
   * @param stock its index in the problem
   * @param pieces how many of each demand come from it, in the order of the demands
   * @param times how many are cut so, at least 1
   */
  public record Pattern(int stock, List<Integer> pieces, int times) {
    public Pattern {
      pieces = List.copyOf(pieces);
    }
  }
}
