package org.slatwright.design.boards;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * Which slats come from which board, and which lie on a shelf together.
 *
 * @param rows one for each row that was asked for, in that order
 */
public record BoardChoice(List<Row> rows) {

  public BoardChoice {
    rows = List.copyOf(rows);
  }

  /**
   * A row of slats that closes.
   *
   * @param slats from the front back, the widest at the front
   * @param gap between two of them; zero when there is one
   */
  public record Row(
      RowNeed need, List<Slat> slats, Length gap, Length frontMargin, Length backMargin) {
    public Row {
      slats = List.copyOf(slats);
    }

    /** Whether the boards give all of its slats. */
    public boolean isFilled() {
      return slats.stream().allMatch(slat -> slat.source().isPresent());
    }
  }

  /**
   * One slat.
   *
   * @param source where it is cut; empty when the boards do not give it
   */
  public record Slat(Length length, Length width, Length thickness, Optional<Source> source) {}

  /**
   * Where a slat is cut.
   *
   * @param board its index among the boards
   * @param from where it begins, along the board
   * @param across where it begins, across the board
   * @param ripped whether it is narrower than its board
   */
  public record Source(int board, Length from, Length across, boolean ripped) {}
}
