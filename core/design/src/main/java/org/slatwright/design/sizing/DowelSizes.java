package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;

/** Which dowels there are to buy, and how deep and how far apart they go by our own rules. */
public final class DowelSizes {

  /** Dowels of the trade, common practice, no source; thickest first. */
  private static final List<Length> METRIC =
      List.of(Length.mm(12), Length.mm(10), Length.mm(8), Length.mm(6));

  private static final List<Length> INCH =
      List.of(Length.inches(1, 2), Length.inches(3, 8), Length.inches(5, 16), Length.inches(1, 4));

  private DowelSizes() {}

  /** Thickest first. */
  public static List<Length> ofTheTrade(Unit unit) {
    return unit.metricOrInch(METRIC, INCH);
  }

  /**
   * Between the centres of two dowels in a rail end: they stand on its quarter points, or nearly so
   * to keep to the increment, but for three diameters between them where the rail is high enough.
   */
  public static Length spacing(Length railHeight, Length diameter, Length increment) {
    Length half = railHeight.half();
    return Length.max(half.snappedDown(increment), Length.min(diameter.times(3), half));
  }

  /** How deep in the rail: three and a half diameters, since it is end grain; a rule of our own. */
  public static Length embedment(Length diameter, Length increment) {
    return diameter.times(7).half().snappedUp(increment);
  }

  /**
   * Room for trapped glue below the dowel: holes 1/16 in deeper than it (WOOD magazine, tips for
   * dowel joinery).
   */
  public static Length glueRoom(Unit unit) {
    return unit.metricOrInch(Length.mm(2), Length.inches(1, 16));
  }
}
