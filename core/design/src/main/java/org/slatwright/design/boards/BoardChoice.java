package org.slatwright.design.boards;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * Which slats come from which board, and which lie on a shelf together.
 *
 * @param rows one for each row that was asked for, in that order
 * @param proved whether every choice that could be better was looked at
 */
public record BoardChoice(List<Row> rows, boolean proved) {

  public BoardChoice {
    rows = List.copyOf(rows);
  }

  /**
   * A row of slats that closes.
   *
   * @param slats from the front back, the widest at the front
   * @param gap between two of them; zero when there is one
   * @param missing what its slats without a source may be; empty when it is filled
   */
  public record Row(
      RowNeed need,
      List<Slat> slats,
      Length gap,
      Length frontMargin,
      Length backMargin,
      Optional<Missing> missing) {
    public Row {
      slats = List.copyOf(slats);
    }

    /** Whether the boards give all of its slats. */
    public boolean isFilled() {
      return missing.isEmpty();
    }
  }

  /**
   * What the missing slats of a row may be, each for itself: with any such slats the row closes.
   *
   * @param narrowest at most {@code widest}
   * @param thinnest at most {@code thickest}
   */
  public record Missing(Length narrowest, Length widest, Length thinnest, Length thickest) {}

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
