package org.slatwright.design.drafting;

import java.util.List;
import java.util.function.Predicate;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Unit;

/**
 * The scales that a sheet may have, largest first: the reductions of ISO 5455 with the steps
 * between that it admits in exceptional cases, which a small sheet of paper is; or those of inch
 * practice (3 in, 1 1/2 in, … to the foot).
 */
final class Scales {

  private static final List<Integer> METRIC =
      List.of(1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200);
  private static final List<Integer> INCH =
      List.of(1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192);

  private Scales() {}

  /** The largest scale that fits; the smallest there is when none does. */
  static Scale largest(Unit units, Predicate<Scale> fits) {
    List<Scale> scales = all(units);
    return scales.stream().filter(fits).findFirst().orElse(scales.get(scales.size() - 1));
  }

  /** The smallest scale that is large enough; full size when none is. */
  static Scale smallest(Unit units, Predicate<Scale> isLargeEnough) {
    List<Scale> scales = all(units);
    return scales.stream()
        .filter(isLargeEnough)
        .reduce((larger, smaller) -> smaller)
        .orElse(scales.get(0));
  }

  private static List<Scale> all(Unit units) {
    return units.metricOrInch(METRIC, INCH).stream().map(real -> new Scale(1, real)).toList();
  }
}
