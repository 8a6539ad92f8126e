package org.slatwright.design.cutting;

import java.util.List;
import org.slatwright.design.cutting.Need.Shortfall;

/**
 * One timber with all its pieces laid on boards.
 *
 * @param layouts every board that is cut into; spare pieces may still be laid on them
 * @param missing pieces that no board is left for
 * @param quality of the plan, in plain words
 */
record LaidTimber(
    Need need, Saw saw, List<Layout> layouts, List<Shortfall> missing, String quality) {

  LaidTimber {
    layouts = List.copyOf(layouts);
    missing = List.copyOf(missing);
  }
}
