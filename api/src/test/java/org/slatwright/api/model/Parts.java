package org.slatwright.api.model;

import java.util.List;
import org.slatwright.api.measure.Length;

/** Parts to test with. */
final class Parts {

  private Parts() {}

  /** A block of 100 × 60 × 40 mm. */
  static Part block(List<Hole> holes, int quantity) {
    return new Part(
        "B",
        "block",
        Role.RAIL,
        new Shape.Bar(Length.mm(100), Length.mm(60), Length.mm(40)),
        new Material(Stock.FRAME, "alder"),
        Grain.ALONG_LENGTH,
        holes,
        quantity);
  }

  /** A hole of 6 mm, 15 mm deep. */
  static Hole hole(String name) {
    return new Hole(
        name, Face.BACK, Length.mm(50), Length.mm(30), Length.mm(6), Length.mm(15), false);
  }
}
