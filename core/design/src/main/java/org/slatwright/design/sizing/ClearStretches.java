package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFile.Range;

/** Where a slat can be cut from a board. */
final class ClearStretches {

  private ClearStretches() {}

  /** Clear of the ends that are squared off and of what must be avoided; none empty. */
  static List<Length> of(RackFile.Board board, Length endTrim) {
    Length end = board.length().minus(endTrim);
    Length from = endTrim;
    List<Length> stretches = new ArrayList<>();
    for (Range avoid : board.avoid()) {
      stretches.add(Length.min(avoid.from(), end).minus(from));
      from = Length.max(from, avoid.to());
    }
    stretches.add(end.minus(from));
    return stretches.stream().filter(Length::isPositive).toList();
  }
}
