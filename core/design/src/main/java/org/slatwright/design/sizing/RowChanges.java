package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile.Range;

/** Each single change that would close a row of slats; every one is tried before it is proposed. */
final class RowChanges {

  private final Worksheet sheet;
  private final RowSizes sizes;
  private final List<Problem.Change> changes = new ArrayList<>();

  RowChanges(Worksheet sheet, RowSizes sizes) {
    this.sheet = sheet;
    this.sizes = sizes;
  }

  /** Rail lengths first, then the number of slats, then gaps. */
  List<Problem.Change> proposed() {
    sizes.rail().ifPresent(this::tryRailsAndCounts);
    tryGap();
    tryRange();
    return changes;
  }

  private void tryRailsAndCounts(Length rail) {
    if (sizes.count().isPresent()) {
      int count = sizes.count().get();
      tryRail(rail.isLessThan(shortest(count)) ? shortest(count) : longest(count));
      tryNearest(count, n -> n - 1);
      tryNearest(count, n -> n + 1);
      return;
    }
    int most = sizes.mostAt(sizes.gap().orElse(sizes.narrowest()));
    if (most > 0) {
      tryRail(longest(most));
    }
    tryRail(shortest(most + 1));
    tryCount(most);
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
    propose(
        sizes.withRail(length),
        "rack.rail-length=" + sheet.spell(length),
        "rails of " + sheet.show(length));
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
    Length widest =
        spread().map(even -> Length.min(even, sizes.range().to())).orElse(sizes.range().to());
    boolean tooWide = sizes.gap().get().isMoreThan(widest);
    Length gap = tooWide ? widest.snappedDown(sheet.increment()) : sizes.narrowest();
    propose(sizes.withGap(gap), "slats.gap=" + sheet.spell(gap), "");
  }

  private void tryRange() {
    if (isUneven()) {
      int most = sizes.mostAt(sizes.narrowest());
      tryRange(most > 0 ? sizes.spread(most + 1) : Length.ZERO);
      return;
    }
    Optional<Length> gap = sizes.gap().or(this::spread);
    if (sizes.binding() && gap.isPresent()) {
      tryRange(gap.get());
    }
  }

  /** Where the number of slats is free, and yet none leaves gaps within the range. */
  private boolean isUneven() {
    return sizes.rail().isPresent() && sizes.count().isEmpty() && sizes.gap().isEmpty();
  }

  private void tryRange(Length gap) {
    Range wider =
        new Range(Length.min(sizes.range().from(), gap), Length.max(sizes.range().to(), gap));
    if (gap.isPositive()) {
      propose(
          sizes.withRange(wider),
          "slats.gap-range=" + sheet.spell(wider.from(), "..", wider.to()),
          "a wider range");
    }
  }

  /** The gap of a given number of slats on a given rail. */
  private Optional<Length> spread() {
    return sizes.rail().isPresent()
        ? sizes.count().filter(count -> count > 1).map(sizes::spread)
        : Optional.empty();
  }

  private boolean propose(RowSizes changed, String setting, String words) {
    Optional<RowSizes.Row> row = changed.close().filter(this::isSensible).filter(this::canBeMade);
    row.ifPresent(closed -> changes.add(new Problem.Change(setting, words(words, closed))));
    return row.isPresent();
  }

  /** Slats that do not touch; a single one that leaves no more bare than a gap may be. */
  private boolean isSensible(RowSizes.Row row) {
    return row.count() == 1
        ? !row.backMargin().isMoreThan(sizes.range().to())
        : row.gap().length().isPositive();
  }

  /** Whether stock and dowels allow its rail; dowels that meet in one as given show anyway. */
  private boolean canBeMade(RowSizes.Row row) {
    Length rail = row.rail().length();
    boolean asGiven = sizes.rail().filter(rail::equals).isPresent();
    return new LongestStock(sheet).holdsRail(rail)
        && (asGiven || !rail.isLessThan(sizes.leastRail()));
  }

  private String words(String first, RowSizes.Row row) {
    String slats = row.count() == 1 ? "one slat" : row.count() + " slats";
    String gaps = row.count() == 1 ? "" : " with gaps of " + sheet.show(row.gap().length());
    return (first.isEmpty() ? "" : first + ": ") + slats + gaps;
  }
}
