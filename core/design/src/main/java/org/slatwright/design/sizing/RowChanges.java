package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile.Range;

/** Each single change that would close a row of slats on a given rail; every one is tried first. */
final class RowChanges {

  private final Worksheet sheet;
  private final RowSizes sizes;
  private final Length rail;
  private final List<Problem.Change> changes = new ArrayList<>();

  RowChanges(Worksheet sheet, RowSizes sizes) {
    this.sheet = sheet;
    this.sizes = sizes;
    this.rail = sizes.rail().orElseThrow();
  }

  /** Rail lengths first, then the number of slats, then gaps. */
  List<Problem.Change> proposed() {
    if (sizes.count().isPresent()) {
      int count = sizes.count().get();
      tryRail(rail.isLessThan(shortest(count)) ? shortest(count) : longest(count));
      tryCounts(count);
    } else {
      int most = sizes.mostAt(sizes.gap().orElse(sizes.narrowest()));
      if (most > 0) {
        tryRail(longest(most));
      }
      tryRail(shortest(most + 1));
      tryCount(most);
    }
    tryGap();
    tryRange();
    return changes;
  }

  private Length shortest(int count) {
    Length gap = sizes.gap().orElse(sizes.narrowest());
    return sizes.used(count, gap).snappedUp(sheet.increment());
  }

  private Length longest(int count) {
    Length gap = sizes.gap().orElse(sizes.range().to());
    return sizes.used(count, gap).snappedDown(sheet.increment());
  }

  private void tryRail(Length length) {
    if (!length.equals(rail)) {
      propose(
          sizes.withRail(length),
          "rack.rail-length=" + sheet.spell(length),
          "rails of " + sheet.show(length));
    }
  }

  private void tryCounts(int count) {
    tryNearest(count, n -> n - 1);
    tryNearest(count, n -> n + 1);
  }

  /** The first number of slats in that direction that leaves a usable gap. */
  private void tryNearest(int count, IntUnaryOperator next) {
    int most = sizes.mostAt(Length.ZERO);
    for (int n = next.applyAsInt(Math.min(count, most + 1));
        n >= 1 && n <= most;
        n = next.applyAsInt(n)) {
      if (tryCount(n)) {
        return;
      }
    }
  }

  private boolean tryCount(int count) {
    return count >= 1 && propose(sizes.withCount(count), "slats.per-shelf=" + count, "");
  }

  private void tryGap() {
    if (sizes.gap().isEmpty()) {
      return;
    }
    int count = sizes.count().orElse(1);
    Length widest =
        count > 1 ? Length.min(sizes.range().to(), sizes.spread(count)) : sizes.range().to();
    Length gap = Length.max(widest.snappedDown(sheet.increment()), Length.ZERO);
    boolean tooWide = sizes.gap().get().isMoreThan(widest);
    Length chosen = tooWide ? gap : sizes.narrowest();
    propose(sizes.withGap(chosen), "slats.gap=" + sheet.spell(chosen), "");
  }

  private void tryRange() {
    Optional<Length> gap =
        sizes.gap().or(() -> sizes.count().filter(n -> n > 1).map(sizes::spread));
    if (sizes.binding() && gap.filter(Length::isPositive).isPresent()) {
      Range wider =
          new Range(
              Length.min(sizes.range().from(), gap.get()),
              Length.max(sizes.range().to(), gap.get()));
      propose(
          sizes.withRange(wider),
          "slats.gap-range=" + sheet.spell(wider.from()) + ".." + sheet.spell(wider.to()),
          "a wider range");
    }
  }

  private boolean propose(RowSizes changed, String setting, String words) {
    Optional<RowSizes.Row> row =
        changed.close().filter(closed -> closed.count() == 1 || closed.gap().length().isPositive());
    row.ifPresent(closed -> changes.add(new Problem.Change(setting, words(words, closed))));
    return row.isPresent();
  }

  private String words(String first, RowSizes.Row row) {
    String slats = row.count() == 1 ? "one slat" : row.count() + " slats";
    String gaps = row.count() == 1 ? "" : " with gaps of " + sheet.show(row.gap().length());
    return (first.isEmpty() ? "" : first + ": ") + slats + gaps;
  }
}
