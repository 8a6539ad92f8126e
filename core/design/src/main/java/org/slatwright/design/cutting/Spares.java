package org.slatwright.design.cutting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.SparePiece;

/** Lays spare pieces on what is over, where it is long enough; they never cost a board. */
final class Spares {

  private final List<LaidTimber> timbers;

  Spares(List<LaidTimber> timbers) {
    this.timbers = timbers;
  }

  /** Takes all of them from the stock that gives most of them. */
  SparePiece lay(String mark, SpareKind kind) {
    Stock stock = kind.stocks().get(0);
    int most = 0;
    for (Stock candidate : kind.stocks()) {
      int gives = gives(candidate, kind);
      if (gives > most) {
        stock = candidate;
        most = gives;
      }
    }
    for (int i = 0; i < most; i++) {
      tightest(stock, kind.length()).orElseThrow().cut(mark, true, kind.length());
    }
    return new SparePiece(mark, kind.name(), kind.use(), stock, kind.length(), kind.wanted(), most);
  }

  private int gives(Stock stock, SpareKind kind) {
    long pieces =
        timbers.stream()
            .filter(timber -> timber.need().stock() == stock)
            .flatMap(
                timber -> runs(timber).map(run -> timber.saw().pieces(run.room(), kind.length())))
            .mapToLong(count -> count)
            .sum();
    return (int) Math.min(kind.wanted(), pieces);
  }

  private Optional<Run> tightest(Stock stock, Length length) {
    return timbers.stream()
        .filter(timber -> timber.need().stock() == stock)
        .flatMap(Spares::runs)
        .filter(run -> !run.room().isLessThan(length))
        .min(Comparator.comparing(Run::room));
  }

  /** Slivers are too narrow to stand or to clamp. */
  private static Stream<Run> runs(LaidTimber timber) {
    return timber.layouts().stream()
        .flatMap(layout -> layout.runs().stream())
        .filter(run -> !run.lane().width().isLessThan(timber.need().narrowest()));
  }
}
