package org.slatwright.design.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Source;
import org.slatwright.api.plan.CutBoard.Stretch;
import org.slatwright.design.boards.Board;
import org.slatwright.design.sizing.Supplies.StockLength;

/**
 * A board before it is cut.
 *
 * @param mark of a reclaimed board; empty for a stock length, which gets its own later
 * @param avoid stretches along it that no piece may hold
 * @param lanes where pieces are cut
 */
record Blank(
    Optional<String> mark,
    Source source,
    Length length,
    Length width,
    Length thickness,
    Optional<BigDecimal> price,
    List<Stretch> avoid,
    List<Lane> lanes) {

  Blank {
    avoid = List.copyOf(avoid);
    lanes = List.copyOf(lanes);
  }

  /** Owned when it lies in the shop and has no price. */
  static Blank of(StockLength stock, Need need, Saw saw) {
    boolean owned = stock.onHand().isPresent() && stock.price().isEmpty();
    Length to = stock.length().minus(saw.endTrim());
    return new Blank(
        Optional.empty(),
        owned ? Source.ON_HAND : Source.BOUGHT,
        stock.length(),
        need.width(),
        need.thickness(),
        stock.price(),
        List.of(),
        List.of(new Lane(saw.endTrim(), to, stock.length(), Length.ZERO, need.width())));
  }

  static Blank of(Board board, List<Lane> lanes) {
    return new Blank(
        Optional.of(board.mark()),
        Source.RECLAIMED,
        board.length(),
        board.width(),
        board.thickness(),
        Optional.empty(),
        board.avoid().stream().map(bad -> new Stretch(bad.from(), bad.to())).toList(),
        lanes);
  }

  /** As it is cut, still without its mark. */
  CutBoard cut(List<CutBoard.Cut> cuts, List<CutBoard.Offcut> offcuts) {
    return new CutBoard(
        List.of(),
        source,
        length,
        width,
        thickness,
        price.map(Money::settled),
        cuts,
        avoid,
        offcuts);
  }
}
