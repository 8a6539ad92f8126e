package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Part;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.api.plan.CutBoard.Source;

/**
 * What is over of the boards of one timber.
 *
 * @param unit of the rack file
 */
record Offcuts(Need need, Saw saw, Unit unit) {

  /** Of whatever is left once its end is squared. */
  List<Offcut> of(Layout layout) {
    List<Offcut> offcuts = new ArrayList<>();
    for (Run run : layout.rests()) {
      if (run.room().isPositive()) {
        offcuts.add(offcut(layout.blank(), run));
      }
    }
    return offcuts;
  }

  private Offcut offcut(Blank blank, Run run) {
    Lane lane = run.lane();
    String gives = gives(blank, run);
    boolean wide = !lane.width().isLessThan(need.narrowest());
    boolean keep = !gives.isEmpty() || wide && !run.room().isLessThan(worthKeeping());
    return new Offcut(
        run.next(), lane.tail().minus(run.next()), lane.across(), lane.width(), keep, gives);
  }

  /** Of an offcut that gives no part of this rack: common practice, no source. */
  private Length worthKeeping() {
    return unit.metricOrInch(Length.mm(300), Length.inches(12, 1));
  }

  /** How many of each part it would give alone, {@code 1 upright or 4 rails}; or empty. */
  private String gives(Blank blank, Run run) {
    List<String> said = new ArrayList<>();
    for (Part part : need.parts()) {
      long count = strips(part, blank, run) * saw.pieces(run.room(), part.shape().length());
      if (count > 0) {
        said.add(need.name(part, count));
      }
    }
    return String.join(" or ", said);
  }

  /**
   * Reclaimed boards give what they are wide and thick enough for, ripped where that gives more.
   */
  private long strips(Part part, Blank blank, Run run) {
    if (blank.source() != Source.RECLAIMED) {
      return 1;
    }
    return blank.thickness().isLessThan(part.shape().thickness())
        ? 0
        : saw.pieces(run.lane().width(), part.shape().width());
  }
}
