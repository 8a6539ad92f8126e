package org.slatwright.design.boards;

import java.util.List;
import org.slatwright.api.measure.Length;

/**
 * One reclaimed board.
 *
 * @param mark chalked on it: {@code B1}
 * @param clear where slats can be cut from it, in order: clear of the ends that are squared off and
 *     of what must be avoided
 * @param avoid what must be avoided
 */
public record Board(
    String mark,
    Length length,
    Length width,
    Length thickness,
    List<Stretch> clear,
    List<Stretch> avoid) {

  public Board {
    clear = List.copyOf(clear);
    avoid = List.copyOf(avoid);
  }

  /** From one place along a board to another. */
  public record Stretch(Length from, Length to) {
    public Length length() {
      return to.minus(from);
    }
  }
}
