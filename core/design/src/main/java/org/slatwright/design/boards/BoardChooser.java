package org.slatwright.design.boards;

import java.util.List;

/** Chooses slats from reclaimed boards. */
public final class BoardChooser {

  private BoardChooser() {}

  /**
   * As many rows as the boards fill, the lower ones first; among such choices the one that rips
   * fewest slats; among those the one that wastes least. Rows that they do not fill are closed with
   * slats that are still to be found. The same boards give the same choice.
   */
  public static BoardChoice choose(List<Board> boards, List<RowNeed> needs, RowRules rules) {
    throw new UnsupportedOperationException("being written");
  }
}
