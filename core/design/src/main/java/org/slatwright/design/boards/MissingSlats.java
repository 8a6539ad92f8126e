package org.slatwright.design.boards;

import java.util.Comparator;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.design.boards.BoardChoice.Missing;

/**
 * Closes a row that the boards do not fill: with as many of their slats as help, and as few as can
 * be that are still to be found. Those are all of one width, at most that of the widest board where
 * the count allows it, and as near to the commonest board's as the row allows.
 */
final class MissingSlats {

  private static final int PATTERNS = 5_000;

  private final Stock stock;
  private boolean proved = true;

  MissingSlats(Stock stock) {
    this.stock = stock;
  }

  /** Whether no row lacks more slats than it must. */
  boolean isProved() {
    return proved;
  }

  Draft.Row close(Draft draft, int length) {
    long rail = stock.fit().rail();
    RowPatterns patterns =
        RowPatterns.of(
            stock,
            draft.available(length),
            new RowPatterns.Strips(stock.mostSlats(), 1, rail),
            PATTERNS);
    proved &= !patterns.isCutShort();
    long usual = stock.commonest().width();
    return patterns.found().stream()
        .min(
            Comparator.comparing((RowPattern row) -> row.leastStrip() > stock.widest())
                .thenComparing(RowPattern::strips)
                .thenComparing(row -> Math.abs(row.stripNear(usual) - usual))
                .thenComparing(RowPattern::spread))
        .map(row -> new Draft.Row(length, row, List.of()))
        .orElseThrow(
            () -> new IllegalArgumentException("no slats close a rail of " + stock.fit().rules()));
  }

  /** What those slats, drawn so wide, may be, each for itself; on the increment. */
  static Missing room(Stock stock, RowPattern row, Length drawn) {
    Length increment = stock.fit().rules().increment();
    Length least = new Length(Math.max(row.leastStrip(), stock.narrowest()));
    Length most = new Length(row.mostStrip());
    Length thickest = new Length(Math.max(thickness(stock, row), row.thickest()));
    return new Missing(
        Length.min(least.snappedUp(increment), drawn),
        Length.max(most.snappedDown(increment), drawn),
        Length.max(Length.ZERO, thickest.minus(stock.fit().rules().thicknessStep())),
        thickest);
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
