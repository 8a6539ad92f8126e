package org.slatwright.design.cuttingstock;

import java.util.List;
import java.util.OptionalInt;

/**
 * Which pieces are wanted, and what they may be cut from. All lengths count the same unit, prices
 * any unit of money.
 *
 * <p>Pieces fit a stock length when Σ(piece + kerf) ≤ (stock - trim) + kerf: a cut follows each
 * piece but one that ends just where the stock does.
 *
 * @param kerf width of a cut, at least 0
 * @param trim what each stock length loses, both ends together, at least 0
 * @param stocks what there is, in any order; several may be of one length
 * @param demands what is wanted, of different lengths, in any order
 */
public record CuttingProblem(long kerf, long trim, List<Stock> stocks, List<Demand> demands) {

  public CuttingProblem {
    stocks = List.copyOf(stocks);
    demands = List.copyOf(demands);
  }

  /**
   * A stock length.
   *
   * @param length at least 1
   * @param price of one, at least 0
   * @param available at most that many; empty for as many as are wanted
   */
  public record Stock(long length, long price, OptionalInt available) {}

  /**
   * Pieces of one length.
   *
   * @param length at least 1
   * @param count how many, at least 1
   */
  public record Demand(long length, int count) {}

  /** Whether such pieces fit that stock length; none of them do fit any. */
  public boolean fits(Stock stock, long pieces, long totalLength) {
    return pieces == 0 || totalLength + kerf * (pieces - 1) <= stock.length() - trim;
  }
}
