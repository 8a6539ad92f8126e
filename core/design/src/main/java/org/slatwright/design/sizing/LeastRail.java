package org.slatwright.design.sizing;

import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;

/**
 * The shortest rail that takes what stands on it and on which a row of slats closes.
 *
 * @param sizes of the row
 * @param need front to back
 */
record LeastRail(RowSizes sizes, Length need) {

  /**
   * That rail; empty where the rail is given, where number and gap of the slats decide it, and
   * where those slats are already long enough, or never will be.
   */
  Optional<Length> solved() {
    if (sizes.rail().isPresent()) {
      return Optional.empty();
    }
    if (sizes.count().isEmpty()) {
      return Optional.of(withFreeCount());
    }
    return sizes.gap().isPresent() ? Optional.empty() : withWiderGaps();
  }

  /** With the number of slats given, gaps widen from their middle only as far as they must. */
  private Optional<Length> withWiderGaps() {
    Length usual = sizes.close().map(row -> row.rail().length()).orElse(need);
    Length widest = sizes.longestRail().orElseThrow().snappedDown(sizes.increment());
    return usual.isLessThan(need)
        ? Stream.of(least(), widest).filter(rail -> closes(rail, usual)).findFirst()
        : Optional.empty();
  }

  /**
   * On a rail that is longer, the same slats leave only wider gaps, until one more goes between.
   */
  private Length withFreeCount() {
    Length least = Length.max(least(), sizes.width().snappedUp(sizes.increment()));
    if (sizes.gap().isPresent()) {
      return least;
    }
    Length narrowest = sizes.narrowest();
    int more = sizes.withRail(least).mostAt(narrowest) + 1;
    Length withOneMore = sizes.used(more, narrowest).snappedUp(sizes.increment());
    return Stream.of(least, withOneMore)
        .filter(rail -> sizes.withRail(rail).close().isPresent())
        .findFirst()
        .orElse(least);
  }

  private boolean closes(Length rail, Length longerThan) {
    return rail.isMoreThan(longerThan) && sizes.withRail(rail).close().isPresent();
  }

  /** For what stands on it and for its dowels. */
  private Length least() {
    return Length.max(need, sizes.leastRail()).snappedUp(sizes.increment());
  }
}
