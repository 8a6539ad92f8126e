package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/**
 * A brad as it is sold: the longer, the thicker. Of 18 gauge up to 50 mm or 2 in, of 16 gauge up to
 * 64 mm or 2 1/2 in (brad tables of help.mytoolkit.co.uk); in inches the nearest fractions.
 *
 * @param longest that is sold so thick
 */
record Brad(Length diameter, Length longest) {

  /** Thinnest first. */
  private static final List<Brad> METRIC =
      List.of(
          new Brad(Length.roundedMm(1.2), Length.mm(50)),
          new Brad(Length.roundedMm(1.6), Length.mm(64)));

  private static final List<Brad> INCH =
      List.of(
          new Brad(Length.inches(3, 64), Length.inches(2, 1)),
          new Brad(Length.inches(1, 16), Length.inches(5, 2)));

  /** The thinnest that is sold so long, or the longest where none is. */
  static Brad reaching(Length length, Unit units) {
    return sold(units).stream()
        .filter(brad -> !length.isMoreThan(brad.longest()))
        .findFirst()
        .orElse(longest(units));
  }

  /** The thickest not thicker than that, or the thinnest where none is. */
  static Brad asThickAs(Length diameter, Unit units) {
    return sold(units).stream()
        .filter(brad -> !brad.diameter().isMoreThan(diameter))
        .reduce((thinner, thicker) -> thicker)
        .orElse(sold(units).get(0));
  }

  /** The longest, which is the thickest. */
  static Brad longest(Unit units) {
    return sold(units).get(sold(units).size() - 1);
  }

  private static List<Brad> sold(Unit units) {
    return units.metricOrInch(METRIC, INCH);
  }
}
