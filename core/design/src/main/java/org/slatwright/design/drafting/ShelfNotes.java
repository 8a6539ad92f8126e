package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.sizing.Rack;

/** What the shelf layout says in words. */
final class ShelfNotes {

  private ShelfNotes() {}

  /** A sentence or two each. */
  static List<String> of(Rack rack, LengthFormat lengths) {
    Rack.Fixing fixing = rack.fixing();
    String kind = fixing.kind().word();
    String many = fixing.perEnd() == 1 ? kind : kind + "s";
    return List.of(
        "From above, the front below. Rails are dashed where slats hide them.",
        "Crosses: "
            + fixing.perEnd()
            + " "
            + many
            + " "
            + lengths.section(fixing.diameter(), fixing.length())
            + " where a slat bears on a rail, at the same places on every slat of its width.",
        "Lay all slats of a shelf out dry before the first is fastened.");
  }
}
