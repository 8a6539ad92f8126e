package org.slatwright.design.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Stock;
import org.slatwright.design.sizing.Rack;

/**
 * Pieces that the build wants and the rack does not keep: common practice, no source.
 *
 * @param stocks what they may be cut from, the best first
 * @param wanted how many
 */
record SpareKind(String name, String use, List<Stock> stocks, Length length, int wanted) {

  private static final List<Stock> ANY = List.of(Stock.SLAT, Stock.FRAME);

  /** The longest first, since long offcuts are rarest. */
  static List<SpareKind> of(Rack rack) {
    List<SpareKind> kinds = new ArrayList<>();
    kinds.add(
        new SpareKind(
            "spacer as wide as the interior",
            "Hold two frames this far apart while the slats are fixed.",
            ANY,
            rack.interiorWidth(),
            2));
    openings(rack)
        .forEach(
            opening ->
                kinds.add(
                    new SpareKind(
                        "spacer between two rails",
                        "Hold a rail at its height above the one below while the glue sets.",
                        ANY,
                        opening,
                        2)));
    kinds.add(
        new SpareKind(
            "squaring block",
            "Cut it dead square and clamp it into a corner of the frame.",
            List.of(Stock.SLAT),
            rack.units().metricOrInch(Length.mm(150), Length.inches(6, 1)),
            2));
    kinds.sort(Comparator.comparing(SpareKind::length).reversed());
    return kinds;
  }

  /** From the top of a rail to the underside of the next. */
  private static Stream<Length> openings(Rack rack) {
    return rack.openings().stream()
        .map(opening -> opening.plus(rack.slats().thickness()))
        .distinct();
  }
}
