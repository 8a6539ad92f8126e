package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/**
 * How thick planed boards are sold. 3/4, 1 and 1 1/2 in are the minimum dressed sizes, dry, of PS
 * 20, the American Softwood Lumber Standard; 18, 20, 21, 32, 38 and 45 mm common planed sizes of
 * European shops, from memory; the others common practice, no source.
 */
public final class PlanedSizes {

  private static final List<Length> METRIC =
      List.of(16, 18, 20, 21, 22, 25, 28, 32, 38, 45).stream().map(Length::mm).toList();

  private static final List<Length> INCH =
      List.of(4, 5, 6, 8, 10, 12).stream().map(eighths -> Length.inches(eighths, 8)).toList();

  private PlanedSizes() {}

  /** Thinnest first. */
  public static List<Length> thicknesses(Unit unit) {
    return unit.metricOrInch(METRIC, INCH);
  }
}
