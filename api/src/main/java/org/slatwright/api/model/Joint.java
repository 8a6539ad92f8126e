package org.slatwright.api.model;

import java.util.List;

/**
 * A rail end glued and dowelled to an upright.
 *
 * @param id unique in the rack: {@code J-1}, …
 * @param upright the piece that is drilled through
 * @param rail the piece that is drilled in its end
 * @param pins the dowels, from the lowest up
 */
public record Joint(String id, Piece upright, Piece rail, List<Pin> pins) {

  public Joint {
    pins = List.copyOf(pins);
  }

  /**
   * One dowel and the two holes it fills; all three share one axis.
   *
   * @param dowel the dowel
   * @param uprightHole the through hole in the upright
   * @param railHole the blind hole in the end of the rail
   */
  public record Pin(Piece dowel, Hole uprightHole, Hole railHole) {}
}
