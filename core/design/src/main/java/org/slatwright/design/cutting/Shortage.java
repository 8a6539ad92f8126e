package org.slatwright.design.cutting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.cutting.Need.Shortfall;
import org.slatwright.design.sizing.Supplies.StockLength;

/**
 * Warns of pieces that the stock lengths at hand do not give. Of slats that come from reclaimed
 * boards alone sizing has warned.
 */
record Shortage(LengthFormat lengths) {

  Stream<Finding> of(LaidTimber timber, List<StockLength> stocks) {
    Optional<Length> longest =
        stocks.stream().map(StockLength::length).max(Comparator.naturalOrder());
    if (timber.missing().isEmpty() || longest.isEmpty()) {
      return Stream.empty();
    }
    return Stream.of(
        new Finding(
            Finding.Severity.WARNING,
            "cutting",
            key(timber.need().stock()),
            "what there is does not give " + spell(timber),
            "",
            "",
            advice(timber, longest.get()),
            ""));
  }

  private static String key(Stock stock) {
    return switch (stock) {
      case FRAME -> "timber.frame.lengths";
      case RAIL -> "timber.rails.lengths";
      case SLAT -> "timber.slats.lengths";
      case DOWEL_ROD -> "timber.dowel.rod-length";
    };
  }

  private String spell(LaidTimber timber) {
    return timber.missing().stream()
        .map(
            missing ->
                "%s of the %s of %s"
                    .formatted(
                        missing.count(),
                        timber.need().name(missing.part(), missing.part().quantity()),
                        lengths.withUnit(missing.part().shape().length())))
        .collect(Collectors.joining(", and "));
  }

  /** One length that gives all that is missing, or one for each piece where it would be longer. */
  private String advice(LaidTimber timber, Length longest) {
    Saw saw = timber.saw();
    Length trims = saw.endTrim().times(2);
    Length all = trims.minus(saw.kerf());
    int pieces = 0;
    Length largest = Length.ZERO;
    for (Shortfall missing : timber.missing()) {
      Length each = missing.part().shape().length();
      all = all.plus(each.plus(saw.kerf()).times(missing.count()));
      pieces += missing.count();
      largest = Length.max(largest, each.plus(trims));
    }
    return all.isMoreThan(longest)
        ? "%s more of at least %s, or fewer that are longer"
            .formatted(pieces, lengths.withUnit(largest))
        : "1 more of at least " + lengths.withUnit(all);
  }
}
