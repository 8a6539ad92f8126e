package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.Board.Stretch;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFile.Range;

/** Where a slat can be cut from a board. */
final class ClearStretches {

  private ClearStretches() {}

  /** Clear of the ends that are squared off and of what must be avoided; none empty. */
  static List<Stretch> of(RackFile.Board board, Length endTrim) {
    Length end = board.length().minus(endTrim);
    Length from = endTrim;
    List<Stretch> stretches = new ArrayList<>();
    for (Range avoid : board.avoid()) {
      stretches.add(new Stretch(from, Length.min(avoid.from(), end)));
      from = Length.max(from, avoid.to());
    }
    stretches.add(new Stretch(from, end));
    return stretches.stream().filter(stretch -> stretch.length().isPositive()).toList();
  }

  /** How long each of them is. */
  static List<Length> lengths(RackFile.Board board, Length endTrim) {
    return of(board, endTrim).stream().map(Stretch::length).toList();
  }
}
