package org.slatwright.design.boards;

import java.util.Optional;
import org.slatwright.api.measure.Length;

/**
 * When a row closes: so many slats, so wide in all, leave room for gaps that are neither too narrow
 * nor too wide. All in nm.
 */
record RowFit(RowRules rules) {

  private static final long NM_PER_MICROMETRE = 1000;

  /** The gap and what is left at the ends of the rail. */
  record Spacing(Length gap, Length frontMargin, Length backMargin) {}

  /** The least that slats of a row of {@code count} are wide in all; may be less than zero. */
  long least(int count) {
    return rail()
        - (count - 1) * rules.mostGap().nanometres()
        - 2 * rules.mostMargin().nanometres();
  }

  /** The most that slats of a row of {@code count} are wide in all. */
  long most(int count) {
    return rail() - (count - 1) * rules.leastGap().nanometres();
  }

  /** Whether a row of {@code count} slats, so wide in all, closes. */
  boolean closes(int count, long width) {
    return allows(count) && width >= least(count) && width <= most(count);
  }

  /** Whether a row may have so many slats. */
  boolean allows(int count) {
    return count > 0 && rules.count().map(fixed -> fixed == count).orElse(true);
  }

  /** Whether a row may have more slats than that. */
  boolean allowsMoreThan(int count) {
    return rules.count().map(fixed -> count < fixed).orElse(true);
  }

  /** Halfway between the narrowest gap and the widest. */
  long middleGap() {
    return rules.leastGap().plus(rules.mostGap()).half().nanometres();
  }

  /**
   * How far a row's gaps are from the middle, squared: what its slats leave free, shared over the
   * gaps, in whole µm. A single slat should leave nothing free. Strips count with the width that
   * suits best, as if the ripped boards had room for it.
   */
  long gapsOff(RowPattern row) {
    return gapsOff(row.slats(), row.width() + row.strips() * row.stripNear(middleStrip(row)));
  }

  /** The same for so many slats, so wide in all. */
  long gapsOff(int count, long width) {
    long off = Math.abs(rail() - width - (count - 1) * middleGap()) / Math.max(1, count - 1);
    return (off / NM_PER_MICROMETRE) * (off / NM_PER_MICROMETRE);
  }

  /** The width of strips that makes the gaps the middle ones; may be less than zero. */
  long middleStrip(RowPattern row) {
    long free = rail() - (row.slats() - 1) * middleGap() - row.width();
    return row.strips() == 0 ? 0 : free / row.strips();
  }

  long rail() {
    return rules.rail().nanometres();
  }

  /**
   * How the slats of a row that closes lie: even gaps, a multiple of the increment where there is
   * one; what is left goes to the margins, the larger half to the back.
   */
  Spacing spacing(int count, long width) {
    Length free = rules.rail().minus(new Length(width));
    if (count == 1) {
      return margins(Length.ZERO, free);
    }
    Length even = Length.min(rules.mostGap(), free.dividedBy(count - 1L));
    return Optional.of(even.snappedDown(rules.increment()))
        .filter(gap -> !gap.isLessThan(rules.leastGap()))
        .map(gap -> margins(gap, free.minus(gap.times(count - 1L))))
        .filter(spacing -> !spacing.backMargin().isMoreThan(rules.mostMargin()))
        .orElseGet(() -> margins(even, free.minus(even.times(count - 1L))));
  }

  /** On the increment, unless that makes the back margin too wide. */
  private Spacing margins(Length gap, Length slack) {
    Length snapped = slack.half().snappedDown(rules.increment());
    boolean fits = !slack.minus(snapped).isMoreThan(rules.mostMargin());
    Length front = fits ? snapped : slack.half();
    return new Spacing(gap, front, slack.minus(front));
  }
}
