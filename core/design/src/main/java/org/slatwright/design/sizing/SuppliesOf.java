package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.design.boards.Board;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.sizing.Supplies.StockLength;

/** Gathers the supplies that a rack file lists. */
final class SuppliesOf {

  private SuppliesOf() {}

  static Supplies file(RackFile file) {
    RackFile.Timber timber = file.timber();
    RackFile.Dowel dowel = timber.dowel();
    List<StockLength> rods =
        dowel.length().isPresent()
            ? List.of()
            : dowel.rodLength().stream()
                .map(rod -> new StockLength(rod.value(), dowel.price(), Optional.empty()))
                .toList();
    return new Supplies(
        lengths(timber.frame().lengths()),
        lengths(timber.rails().map(RackFile.RailStock::lengths).orElse(List.of())),
        lengths(timber.slats().lengths()),
        rods,
        dowel.length().isPresent() ? dowel.price() : Optional.empty(),
        boards(file),
        file.shop().kerf(),
        file.shop().endTrim());
  }

  private static List<StockLength> lengths(List<RackFile.StockLength> listed) {
    return listed.stream()
        .map(stock -> new StockLength(stock.length().value(), stock.price(), stock.onHand()))
        .toList();
  }

  /** Each by itself, marked B1, B2, … in the order of the file. */
  private static List<Board> boards(RackFile file) {
    List<Board> boards = new ArrayList<>();
    for (Given<RackFile.Board> given : file.timber().slats().boards()) {
      RackFile.Board board = given.value();
      List<Board.Stretch> clear = ClearStretches.of(board, file.shop().endTrim());
      List<Board.Stretch> avoid =
          board.avoid().stream().map(range -> new Board.Stretch(range.from(), range.to())).toList();
      for (int i = 0; i < board.count(); i++) {
        String mark = "B" + (boards.size() + 1);
        boards.add(new Board(mark, board.length(), board.width(), board.thickness(), clear, avoid));
      }
    }
    return boards;
  }
}
