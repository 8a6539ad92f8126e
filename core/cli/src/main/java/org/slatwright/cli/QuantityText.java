package org.slatwright.cli;

import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;

/** Spells what the rack weighs and what building it uses up, one quantity a line. */
final class QuantityText {

  private QuantityText() {}

  static List<String> of(Plan plan) {
    Quantities all = plan.quantities();
    LengthFormat lengths = plan.lengths();
    String height = lengths.withUnit(lengths.rounded(all.centreOfGravity().z()));
    return List.of(
        "weight             " + all.mass().withUnit(lengths.unit()) + ", empty",
        "centre of gravity  " + height + " above the floor, empty",
        "finish area        " + all.finishArea().withUnit(lengths.unit()),
        "glue               " + all.glue().withUnit(lengths.unit()),
        "dowels             " + all.dowels() + ", " + lengths.withUnit(all.dowelRod()) + " of rod",
        "fixings            " + all.fixings());
  }
}
