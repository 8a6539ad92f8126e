package org.slatwright.design.drafting;

import org.slatwright.api.measure.Unit;

/** How units are named on a sheet. */
final class Units {

  private Units() {}

  static String words(Unit unit) {
    return unit == Unit.MM ? "millimetres" : "inches";
  }
}
