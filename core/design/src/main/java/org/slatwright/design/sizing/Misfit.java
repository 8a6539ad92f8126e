package org.slatwright.design.sizing;

import org.slatwright.api.measure.Length;

/**
 * A thing that does not go in as the rack file asks.
 *
 * @param need what it takes
 * @param room the most that there is
 */
record Misfit(Thing thing, Way way, Length need, Length room) {

  /** Which way it is too large. */
  enum Way {
    ACROSS,
    DEEP,
    /** For every opening; the top shelf is open above. */
    ABOVE
  }

  /** By how much it is too large; zero or less where it fits. */
  Length lack() {
    return need.minus(room);
  }

  /** Whether both are of one thing, too large one way, by however much. */
  boolean isLike(Misfit other) {
    return way == other.way && thing.name().equals(other.thing.name());
  }
}
