package org.slatwright.design.jig;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Fastener;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Supplies;
import org.slatwright.design.wood.Climate;
import org.slatwright.design.wood.Species;
import org.slatwright.design.wood.StrengthClass;
import org.slatwright.design.wood.Timber;

/**
 * The stock, dowels and sheet that a jig is made for.
 *
 * @param dowels per joint; two lie about a quarter of the rail's height from its edges, their
 *     distance a multiple of the increment
 */
public record Bench(
    Unit units,
    Length uprightWidth,
    Length uprightDepth,
    Length railWidth,
    Length railHeight,
    Length dowel,
    int dowels,
    Length sheet,
    Optional<Length> bush) {

  /** Square stock for uprights and rails alike, one dowel a joint. */
  public static Bench square(double side, double dowel, double sheet) {
    return measured(side, side, dowel, sheet);
  }

  private static final Timber SPRUCE =
      new Timber(
          Species.all().stream()
              .filter(species -> species.name().equals("norway spruce"))
              .findFirst()
              .orElseThrow(),
          StrengthClass.C16);

  /** Stock of a measured section for uprights and rails alike, one dowel a joint. */
  static Bench measured(double width, double depth, double dowel, double sheet) {
    return new Bench(
        Unit.MM,
        mm(width),
        mm(depth),
        mm(width),
        mm(depth),
        mm(dowel),
        1,
        mm(sheet),
        Optional.empty());
  }

  Bench withRail(double width, double height, int dowelsPerJoint) {
    return new Bench(
        units,
        uprightWidth,
        uprightDepth,
        mm(width),
        mm(height),
        dowel,
        dowelsPerJoint,
        sheet,
        bush);
  }

  Bench in(Unit unit) {
    return new Bench(
        unit, uprightWidth, uprightDepth, railWidth, railHeight, dowel, dowels, sheet, bush);
  }

  Bench withBush(double outside) {
    return new Bench(
        units,
        uprightWidth,
        uprightDepth,
        railWidth,
        railHeight,
        dowel,
        dowels,
        sheet,
        Optional.of(mm(outside)));
  }

  /** A rack of three shelves from that stock. */
  public Rack rack() {
    Length slat = Length.mm(18);
    Length opening = Length.mm(300);
    Length foot = Length.mm(100);
    Length uprightLength =
        foot.plus(railHeight.plus(slat).times(3)).plus(opening.times(2)).plus(Length.mm(200));
    Length embedment = new Length(dowel.nanometres() * 7 / 2);
    return new Rack(
        "Ware rack",
        units,
        increment(),
        Optional.empty(),
        "norway spruce",
        false,
        SPRUCE,
        SPRUCE,
        new Mass(15_000),
        Climate.INDOORS,
        false,
        false,
        new Rack.Upright(uprightWidth, uprightDepth, uprightLength),
        new Rack.Rail(railWidth, railHeight, Length.mm(320)),
        1,
        Length.mm(580),
        foot,
        List.of(opening, opening),
        Length.mm(200),
        new Rack.SlatRow(
            List.of(Length.mm(580).plus(uprightWidth.times(2))),
            slat,
            slat,
            Length.mm(95),
            3,
            Length.mm(17),
            Optional.empty(),
            Length.ZERO,
            Length.mm(1),
            Length.ZERO),
        new Rack.DowelJoint(
            dowel,
            dowelHeights(),
            embedment,
            uprightDepth.plus(embedment),
            embedment.plus(Length.mm(2))),
        new Rack.Fixing(Fastener.Kind.BRAD, Length.mm(40), mm(1.2), 2),
        new Rack.Shop(
            Optional.empty(),
            new Rack.JigSheet(sheet, Length.mm(600), Length.mm(400)),
            bush,
            Optional.empty(),
            Paper.A4,
            Length.inches(1, 4)),
        new Supplies(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            List.of(),
            mm(3.2),
            Length.mm(10)),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of());
  }

  /** The sheet that must be left beside any opening: its thickness, but 4 to 10 mm, 3/16 to 3/8. */
  double webMm() {
    return Math.min(mmOr(10, 3.0 / 8), Math.max(mmOr(4, 3.0 / 16), sheet.inMm()));
  }

  /** What a jig allows in a file in mm, or in one in inches; in mm. */
  double mmOr(double millimetres, double inches) {
    return units == Unit.INCH ? inches * 25.4 : millimetres;
  }

  private Length increment() {
    return units == Unit.INCH ? Length.inches(1, 16) : Length.mm(1);
  }

  private List<Length> dowelHeights() {
    Length apart = railHeight.half().snappedDown(increment()).times(dowels - 1);
    Length lowest = railHeight.minus(apart).half();
    return dowels == 1 ? List.of(lowest) : List.of(lowest, lowest.plus(apart));
  }

  static Length mm(double millimetres) {
    return Length.roundedMm(millimetres);
  }
}
