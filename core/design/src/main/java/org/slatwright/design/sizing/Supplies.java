package org.slatwright.design.sizing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.Board;

/**
 * What the parts of a rack are cut from.
 *
 * @param frame lengths of the frame stock; empty when the maker lists none
 * @param rails lengths of the rails' own stock; empty when they have none or the maker lists none
 * @param slats lengths of the slat stock; empty when the maker lists none
 * @param rods lengths of dowel rod: one, or none when dowels are bought cut or no rod is given
 * @param dowelPrice of a dowel bought cut
 * @param boards every single reclaimed board; empty when slats are not cut from any
 * @param kerf of the saw
 * @param endTrim squared off each end of a stock length
 */
public record Supplies(
    List<StockLength> frame,
    List<StockLength> rails,
    List<StockLength> slats,
    List<StockLength> rods,
    Optional<BigDecimal> dowelPrice,
    List<Board> boards,
    Length kerf,
    Length endTrim) {

  public Supplies {
    frame = List.copyOf(frame);
    rails = List.copyOf(rails);
    slats = List.copyOf(slats);
    rods = List.copyOf(rods);
    boards = List.copyOf(boards);
  }

  /**
   * A length that can be bought, or lies in the shop.
   *
   * @param price of one; empty when it is owned, or when its price is not known
   * @param onHand how many there are; empty for as many as are wanted
   */
  public record StockLength(Length length, Optional<BigDecimal> price, Optional<Integer> onHand) {}
}
