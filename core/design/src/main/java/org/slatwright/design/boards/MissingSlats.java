package org.slatwright.design.boards;

import java.util.Comparator;
import java.util.List;

/**
 * Closes a row that the boards do not fill: with as many of their slats as help, and as few as can
 * be that are still to be found. Those are all of one width, at most that of the widest board where
 * the count allows it, and as near to the commonest board's as the row allows.
 */
final class MissingSlats {

  private static final int PATTERNS = 5_000;

  private MissingSlats() {}

  static Draft.Row close(Stock stock, Draft draft, int length) {
    long rail = stock.fit().rail();
    List<RowPattern> patterns =
        RowPatterns.of(
            stock,
            draft.available(length),
            new RowPatterns.Strips(stock.mostSlats(), 1, rail),
            PATTERNS);
    long usual = stock.commonest().width();
    return patterns.stream()
        .min(
            Comparator.comparing((RowPattern row) -> row.leastStrip() > stock.widest())
                .thenComparing(RowPattern::strips)
                .thenComparing(row -> Math.abs(row.stripNear(usual) - usual))
                .thenComparing(RowPattern::spread))
        .map(row -> new Draft.Row(length, row, List.of()))
        .orElseThrow(
            () -> new IllegalArgumentException("no slats close a rail of " + stock.fit().rules()));
  }

  /** As thick as the commonest board, or else as the row's thinnest slat. */
  static long thickness(Stock stock, RowPattern row) {
    long usual = stock.commonest().thickness();
    long step = stock.fit().rules().thicknessStep().nanometres();
    boolean fits =
        row.pieces() == 0 || (row.thickest() - usual <= step && usual - row.thinnest() <= step);
    return fits ? usual : row.thinnest();
  }
}
