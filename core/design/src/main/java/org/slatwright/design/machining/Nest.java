package org.slatwright.design.machining;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.Laid;
import org.slatwright.design.outline.Polygons;
import org.slatwright.design.packing.Packing;
import org.slatwright.design.packing.Spot;
import org.slatwright.design.sizing.Rack;

/**
 * The sheets that the plates of a jig are cut from.
 *
 * @param sheet their size
 * @param spacing between two plates, and between a plate and the edge of the sheet
 */
record Nest(Rack.JigSheet sheet, Length spacing) {

  static Nest of(Rack.Shop shop, Unit units) {
    return new Nest(shop.jigSheet(), spacing(shop, units));
  }

  /**
   * What a cutter takes between two plates and a web beside it, so that no cut opens into another
   * and the sheet stays whole: common practice, no source. Where no cutter is named there is room
   * for the commonest bit.
   */
  private static Length spacing(Rack.Shop shop, Unit units) {
    Length web = units.metricOrInch(Length.mm(3), Length.inches(1, 8));
    Length commonest = units.metricOrInch(Length.mm(6), Length.inches(1, 4));
    return web.plus(shop.cutter().map(cutter -> cutter.offset().times(2)).orElse(commonest));
  }

  /** A plate on a sheet. */
  record Placed(Plate plate, int sheet, Laid laid) {}

  /** Every plate as often as the jig has it, or empty when one is larger than a sheet. */
  Optional<List<Placed>> place(Jig jig) {
    List<Plate> plates =
        jig.plates().stream()
            .flatMap(plate -> Collections.nCopies(plate.quantity(), plate).stream())
            .toList();
    List<Polygon> shapes = plates.stream().map(plate -> Polygons.of(plate.boundary())).toList();
    return new Packing(usable(sheet.width()), usable(sheet.height()), spacing.inMm())
        .place(shapes)
        .map(
            spots ->
                IntStream.range(0, plates.size())
                    .mapToObj(i -> placed(plates.get(i), spots.get(i)))
                    .toList());
  }

  /** The plates on each sheet. */
  Optional<List<List<Placed>>> sheets(Jig jig) {
    return place(jig)
        .map(
            placed -> {
              List<List<Placed>> sheets = new ArrayList<>();
              for (Placed plate : placed) {
                while (sheets.size() <= plate.sheet()) {
                  sheets.add(new ArrayList<>());
                }
                sheets.get(plate.sheet()).add(plate);
              }
              return sheets;
            });
  }

  private double usable(Length side) {
    return side.minus(spacing.times(2)).inMm();
  }

  private Placed placed(Plate plate, Spot spot) {
    Outline turned = new Laid(spot.quarterTurns(), Length.ZERO, Length.ZERO).of(plate.boundary());
    Extent box = Extent.of(turned);
    Length x = spacing.plus(Length.roundedMm(spot.xMm()));
    Length y = spacing.plus(Length.roundedMm(spot.yMm()));
    return new Placed(
        plate,
        spot.sheet(),
        new Laid(spot.quarterTurns(), x.minus(box.low().x()), y.minus(box.low().y())));
  }
}
