package org.slatwright.design.sizing;

import org.slatwright.api.measure.Length;

/** How many pieces go into a length, one behind the other. */
public final class Fitting {

  private Fitting() {}

  /**
   * How many lie in {@code room}; none where that is negative.
   *
   * @param each how long one is; positive together with {@code between}
   * @param between a kerf or a gap from one to the next
   */
  public static long pieces(Length room, Length each, Length between) {
    return Math.max(0, room.plus(between).wholeTimes(each.plus(between)));
  }
}
