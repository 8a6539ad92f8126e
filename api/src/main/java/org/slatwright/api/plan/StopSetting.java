package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Length;

/**
 * One setting of the stop block, and all that is cut at it.
 *
 * @param length from the blade to the block
 * @param works board after board
 */
public record StopSetting(Length length, List<Work> works) {

  public StopSetting {
    works = List.copyOf(works);
  }

  /**
   * The pieces that one board gives at this setting.
   *
   * @param board its mark
   * @param piece the mark pencilled on each of them
   * @param count how many
   */
  public record Work(String board, String piece, int count) {}
}
