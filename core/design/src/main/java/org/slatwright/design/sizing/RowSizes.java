package org.slatwright.design.sizing;

import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFile.Range;

/**
 * What is known of a row of slats before it is closed: front margin + count × width + (count - 1) ×
 * gap + back margin = rail length.
 *
 * @param width of a slat
 * @param increment that solved lengths snap to
 * @param range that gaps should keep within
 * @param leastRail the shortest in which the dowels from both ends keep apart
 * @param binding whether the maker gave that range, so that no gap may leave it
 */
record RowSizes(
    Length width,
    Length increment,
    Range range,
    Length leastRail,
    boolean binding,
    Optional<Length> rail,
    Optional<Integer> count,
    Optional<Length> gap) {

  static RowSizes of(Worksheet sheet, Length slatWidth, Length leastRail) {
    RackFile.Slats slats = sheet.file().slats();
    Range usual =
        new Range(
            sheet.metricOrInch(Length.mm(3), Length.inches(1, 8)),
            sheet.metricOrInch(Length.mm(20), Length.inches(3, 4)));
    return new RowSizes(
        slatWidth,
        sheet.increment(),
        slats.gapRange().map(Given::value).orElse(usual),
        leastRail,
        slats.gapRange().isPresent(),
        sheet.file().rack().railLength().map(Given::value),
        slats.perShelf().map(Given::value),
        slats.gap().map(Given::value));
  }

  RowSizes withRail(Length length) {
    return new RowSizes(
        width, increment, range, leastRail, binding, Optional.of(length), count, gap);
  }

  RowSizes withoutRail() {
    return new RowSizes(width, increment, range, leastRail, binding, Optional.empty(), count, gap);
  }

  RowSizes withCount(int slats) {
    return new RowSizes(width, increment, range, leastRail, binding, rail, Optional.of(slats), gap);
  }

  RowSizes withGap(Length length) {
    return new RowSizes(
        width, increment, range, leastRail, binding, rail, count, Optional.of(length));
  }

  RowSizes withRange(Range other) {
    return new RowSizes(width, increment, other, leastRail, true, rail, count, gap);
  }

  /** The longest rail that the given sizes allow without gaps wider than usual; empty when free. */
  Optional<Length> longestRail() {
    return rail.or(() -> count.map(slats -> used(slats, gap.orElse(range.to()))));
  }

  /** The row when it closes, empty when these sizes cannot. */
  Optional<Row> close() {
    if (rail.isEmpty()) {
      return count.flatMap(slats -> laid(builtUp(slats), slats, gapOf(slats)));
    }
    int slats = count.orElseGet(() -> mostAt(gap.orElse(narrowest())));
    Length chosen = slats == 1 || gap.isPresent() ? gapOf(slats) : spread(slats);
    boolean free = count.isEmpty() && gap.isEmpty();
    return laid(rail.get(), slats, chosen).filter(row -> !free || isClose(row));
  }

  /** The gap that shares the rail equally, snapped down; negative when the slats are too wide. */
  Length spread(int slats) {
    Length free = rail.orElseThrow().minus(width.times(slats));
    return free.dividedBy(slats - 1L).snappedDown(increment);
  }

  /** How many slats lie on the rail with that gap. */
  int mostAt(Length chosen) {
    return Math.toIntExact(Fitting.pieces(rail.orElseThrow(), width, chosen));
  }

  /** The smallest multiple of the increment within the range. */
  Length narrowest() {
    return range.from().snappedUp(increment);
  }

  /** What slats and gaps take. */
  Length used(int slats, Length chosen) {
    return width.times(slats).plus(chosen.times(slats - 1L));
  }

  boolean isWithinRange(Length chosen) {
    return !chosen.isLessThan(range.from()) && !chosen.isMoreThan(range.to());
  }

  private Length builtUp(int slats) {
    return used(slats, gapOf(slats)).snappedUp(increment);
  }

  /** The gap as given, or else the middle of the range. */
  private Length gapOf(int slats) {
    return slats == 1 ? Length.ZERO : gap.orElseGet(this::middle);
  }

  /** On the increment, unless the range is too narrow to hold a multiple of it. */
  private Length middle() {
    Length middle = range.from().plus(range.to()).half();
    return Stream.of(middle.snappedDown(increment), middle.snappedUp(increment))
        .filter(this::isWithinRange)
        .findFirst()
        .orElse(middle);
  }

  private Optional<Row> laid(Length length, int slats, Length chosen) {
    boolean allowed = slats == 1 || !binding || isWithinRange(chosen);
    Length slack = slats < 1 ? length.negated() : length.minus(used(slats, chosen));
    if (slats < 1 || !allowed || chosen.isNegative() || slack.isNegative()) {
      return Optional.empty();
    }
    Length front = slack.half().snappedDown(increment);
    return Optional.of(
        new Row(
            Sized.of(rail, length),
            slats,
            slats == 1 ? Sized.solved(Length.ZERO) : Sized.of(gap, chosen),
            front,
            slack.minus(front)));
  }

  /** Whether no opening is wider than the range allows; a single slat has only its margins. */
  private boolean isClose(Row row) {
    Length widest = row.count() == 1 ? row.backMargin() : row.gap().length();
    return !widest.isMoreThan(range.to());
  }

  /**
   * A row that closes.
   *
   * @param gap between two slats; zero when there is one
   * @param frontMargin a multiple of the increment, at most half the slack
   * @param backMargin the rest of the slack
   */
  record Row(Sized rail, int count, Sized gap, Length frontMargin, Length backMargin) {}
}
