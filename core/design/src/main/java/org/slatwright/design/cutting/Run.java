package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard.Cut;

/** A lane while it is being filled: a kerf follows each piece. */
final class Run {

  private final Lane lane;
  private final Length kerf;
  private final List<Cut> cuts = new ArrayList<>();
  private Length next;

  Run(Lane lane, Length kerf) {
    this.lane = lane;
    this.kerf = kerf;
    this.next = lane.from();
  }

  Lane lane() {
    return lane;
  }

  List<Cut> cuts() {
    return List.copyOf(cuts);
  }

  boolean isTouched() {
    return !cuts.isEmpty();
  }

  /** Where the next piece would begin. */
  Length next() {
    return next;
  }

  /** What another piece may measure; not positive when nothing is left. */
  Length room() {
    return lane.to().minus(next);
  }

  /** The same as wide as to the far edge of a lane beside it, where nothing is cut from either. */
  Run widenedTo(Lane beside) {
    Length width = beside.across().plus(beside.width()).minus(lane.across());
    return new Run(new Lane(lane.from(), lane.to(), lane.tail(), lane.across(), width), kerf);
  }

  /** Cuts the next piece, for which there must be room. */
  void cut(String mark, boolean spare, Length length) {
    if (length.isMoreThan(room())) {
      throw new IllegalArgumentException("no room for " + mark + " of " + length + " in " + lane);
    }
    cuts.add(new Cut(mark, spare, next, length, lane.across(), lane.width()));
    next = next.plus(length).plus(kerf);
  }
}
