package org.slatwright.api.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Volume;

/**
 * What to buy, and how every stock length is cut.
 *
 * @param timbers one for each timber whose lengths or boards are known: frame stock, rail stock,
 *     slat stock, dowel rod
 * @param shelves what lies on each shelf, where slats differ: from the floor up, then from the
 *     left; empty where all slats are alike
 * @param spares pieces that the build wants and the rack does not keep, the longest first
 * @param buying what to buy, in the order of the timbers, then fixings and glue
 * @param cost of all that is bought and has a price, in the currency of the rack file; empty when
 *     nothing has one
 * @param volume of the timber that is bought, as measured
 */
public record CuttingPlan(
    List<TimberCuts> timbers,
    List<ShelfSlats> shelves,
    List<SparePiece> spares,
    List<Purchase> buying,
    Optional<BigDecimal> cost,
    Volume volume) {

  /** Of a rack whose file lists no timber to cut. */
  public static final CuttingPlan NONE =
      new CuttingPlan(List.of(), List.of(), List.of(), List.of(), Optional.empty(), Volume.ZERO);

  public CuttingPlan {
    timbers = List.copyOf(timbers);
    shelves = List.copyOf(shelves);
    spares = List.copyOf(spares);
    buying = List.copyOf(buying);
  }
}
