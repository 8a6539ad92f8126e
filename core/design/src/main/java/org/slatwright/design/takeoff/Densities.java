package org.slatwright.design.takeoff;

import org.slatwright.api.model.Stock;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.wood.Species;

/** What each stock of a rack weighs, at the middle of the moisture that its climate gives wood. */
record Densities(Rack rack) {

  /** What dowel rod is mostly turned from: common practice, no source. */
  private static final String DOWEL_SPECIES = "european beech";

  private static final double M3_PER_MM3 = 1e-9;

  /** In kg/mm³. */
  double of(Stock stock) {
    return species(stock).density(rack.climate().usual()) * M3_PER_MM3;
  }

  private Species species(Stock stock) {
    return switch (stock) {
      case FRAME, RAIL -> rack.timber().species();
      case SLAT -> rack.slatTimber().species();
      case DOWEL_ROD -> Species.named(DOWEL_SPECIES).orElseThrow();
    };
  }
}
