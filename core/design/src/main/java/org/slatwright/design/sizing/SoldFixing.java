package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Fastener;

/**
 * A brad or screw as it is sold: the longer, the thicker. Brads of 18 gauge up to 50 mm or 2 in, of
 * 16 gauge up to 64 mm or 2 1/2 in (brad tables of help.mytoolkit.co.uk). Screws of the usual
 * thicknesses; in inches numbers 4, 6, 8, 10 and 12 (Wood Handbook, FPL-GTR-282, table 8-9), all in
 * the nearest fractions. How long screws are sold, and the steps of length: common practice, from
 * memory.
 *
 * @param longest that is usually sold so thick
 */
public record SoldFixing(Length diameter, Length longest) {

  private static final List<SoldFixing> METRIC_BRADS = List.of(mm(1.2, 50), mm(1.6, 64));
  private static final List<SoldFixing> INCH_BRADS = List.of(inch(3, 64, 8), inch(4, 64, 10));
  private static final List<SoldFixing> METRIC_SCREWS =
      List.of(mm(3, 45), mm(3.5, 50), mm(4, 70), mm(4.5, 80), mm(5, 100), mm(6, 150));
  private static final List<SoldFixing> INCH_SCREWS =
      List.of(inch(7, 64, 7), inch(9, 64, 8), inch(10, 64, 12), inch(12, 64, 14), inch(14, 64, 16));

  /** Thinnest first. */
  public static List<SoldFixing> of(Fastener.Kind kind, Unit unit) {
    return kind == Fastener.Kind.SCREW
        ? unit.metricOrInch(METRIC_SCREWS, INCH_SCREWS)
        : unit.metricOrInch(METRIC_BRADS, INCH_BRADS);
  }

  /** The thickness that is usual where there is room: common practice, no source. */
  public static Length usual(Fastener.Kind kind, Unit unit) {
    return kind == Fastener.Kind.SCREW
        ? unit.metricOrInch(Length.mm(4), Length.inches(5, 32))
        : of(kind, unit).get(0).diameter();
  }

  /** From one length to the next. */
  public static Length step(Unit unit) {
    return unit.metricOrInch(Length.mm(5), Length.inches(1, 4));
  }

  /** The thickest not thicker than that, or the thinnest where none is. */
  static SoldFixing asThickAs(Length diameter, Fastener.Kind kind, Unit unit) {
    List<SoldFixing> sold = of(kind, unit);
    return sold.stream()
        .filter(each -> !each.diameter().isMoreThan(diameter))
        .reduce((thinner, thicker) -> thicker)
        .orElse(sold.get(0));
  }

  private static SoldFixing mm(double diameter, int longest) {
    return new SoldFixing(Length.roundedMm(diameter), Length.mm(longest));
  }

  private static SoldFixing inch(int times, int denominator, int quarters) {
    return new SoldFixing(Length.inches(times, denominator), Length.inches(quarters, 4));
  }
}
