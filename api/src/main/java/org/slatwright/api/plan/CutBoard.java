package org.slatwright.api.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * A board, or several cut alike. Places on it are measured along it from the end that is cut first,
 * and across it from the edge that lies against the fence.
 *
 * @param marks of the boards, unique in the plan: {@code F1}, {@code F2}; chalked on them
 * @param source where they come from
 * @param length of each, before its ends are squared
 * @param width of each; the diameter of a rod
 * @param thickness of each; the diameter of a rod
 * @param price of each; empty when it is owned or has none
 * @param cuts the pieces from the first end on
 * @param avoid stretches along it that no piece may hold
 * @param offcuts what is left over where a piece may lie once its end is squared
 */
public record CutBoard(
    List<String> marks,
    Source source,
    Length length,
    Length width,
    Length thickness,
    Optional<BigDecimal> price,
    List<Cut> cuts,
    List<Stretch> avoid,
    List<Offcut> offcuts) {

  public CutBoard {
    marks = List.copyOf(marks);
    cuts = List.copyOf(cuts);
    avoid = List.copyOf(avoid);
    offcuts = List.copyOf(offcuts);
  }

  /** The same boards with their marks. */
  public CutBoard marked(List<String> others) {
    return new CutBoard(others, source, length, width, thickness, price, cuts, avoid, offcuts);
  }

  /** Where a board comes from. */
  public enum Source {
    BOUGHT("to buy"),
    ON_HAND("on hand"),
    RECLAIMED("reclaimed");

    private final String word;

    Source(String word) {
      this.word = word;
    }

    /** As written in a table. */
    public String word() {
      return word;
    }
  }

  /**
   * A piece as it lies on its board.
   *
   * @param mark of its part or spare piece, pencilled on it
   * @param spare whether it is a spare piece, which the rack does not keep
   * @param from where it begins, along the board
   * @param length along the board
   * @param across where it begins, across the board
   * @param width across the board: less than the board's where it is ripped
   */
  public record Cut(
      String mark, boolean spare, Length from, Length length, Length across, Length width) {}

  /** From one place along a board to another. */
  public record Stretch(Length from, Length to) {}

  /**
   * What is left of a board.
   *
   * @param from where it begins, along the board
   * @param length to where it ends, the end that was not squared included
   * @param across where it begins, across the board
   * @param width across the board
   * @param keep whether it is worth keeping
   * @param gives what it can still give: {@code 2 rails}; or empty
   */
  public record Offcut(
      Length from, Length length, Length across, Length width, boolean keep, String gives) {}
}
