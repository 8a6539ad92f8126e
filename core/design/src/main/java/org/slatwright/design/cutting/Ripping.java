package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.Board;

/** How a board is ripped into strips of one width, from end to end, before they are cut off. */
final class Ripping {

  private Ripping() {}

  /** The clear stretches of each strip, and what is left beside the last strip. */
  static List<Lane> lanes(Board board, Length width, Saw saw) {
    List<Lane> lanes = new ArrayList<>();
    Length across = Length.ZERO;
    while (!board.width().minus(across).isLessThan(width)) {
      for (Board.Stretch clear : board.clear()) {
        lanes.add(lane(board, clear, across, width, saw));
      }
      across = across.plus(width).plus(saw.kerf());
    }
    Length beside = board.width().minus(across);
    if (beside.isPositive() && across.isPositive()) {
      lanes.add(new Lane(Length.ZERO, board.length(), board.length(), across, beside));
    }
    return lanes;
  }

  /** The last stretch runs on to the end that is not squared. */
  static Lane lane(Board board, Board.Stretch clear, Length across, Length width, Saw saw) {
    boolean last = clear.to().equals(board.length().minus(saw.endTrim()));
    Length tail = last ? board.length() : clear.to();
    return new Lane(clear.from(), clear.to(), tail, across, width);
  }
}
