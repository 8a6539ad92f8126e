package org.slatwright.design.sizing;

import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.design.rackfile.Given;

/** What each shelf must carry. */
final class ShelfLoad {

  /** Of a domestic shelf, spread evenly: about 0.65 kg/dm² (EN 14749, from memory). */
  private static final double KG_PER_MM2 = 0.65 / 1e4;

  private ShelfLoad() {}

  /**
   * As given, or else what a domestic shelf of that size is tested with, in whole kilograms or
   * pounds.
   */
  static Mass choose(Worksheet sheet, Length width, Length depth) {
    Optional<Mass> given = sheet.file().load().perShelf().map(Given::value);
    if (given.isPresent()) {
      return given.get();
    }
    double grams = width.inMm() * depth.inMm() * KG_PER_MM2 * 1000;
    double whole = Mass.gramsEach(sheet.file().units()).doubleValue();
    Mass usual = new Mass(Math.round(Math.max(1, Math.round(grams / whole)) * whole));
    sheet.note(
        "load.per-shelf",
        "reckoned with %s on each shelf: what a domestic shelf of its size must carry"
            .formatted(usual.withUnit(sheet.file().units())),
        "give load.per-shelf if yours carry another load");
    return usual;
  }
}
