package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;
import org.slatwright.design.sizing.Spelling;

/**
 * Whether a child's finger can be trapped between two slats: it goes into a gap of more than 7 mm
 * and is held by one of less than 12 mm (EN 16121 and EN 14749, from memory).
 */
final class FingerGaps implements Rule {

  private static final Length HOLDS_FROM = Length.mm(7);
  private static final Length HOLDS_TO = Length.mm(12);

  @Override
  public Stream<Finding> check(Design design) {
    return design.rack().rows().stream()
        .filter(FingerGaps::holds)
        .findFirst()
        .map(row -> finding(design.rack(), row))
        .stream();
  }

  private static boolean holds(ShelfRow row) {
    return row.slats().size() > 1
        && row.gap().isMoreThan(HOLDS_FROM)
        && row.gap().isLessThan(HOLDS_TO);
  }

  private static Finding finding(Rack rack, ShelfRow row) {
    Figures figures = new Figures(rack.lengths());
    return new Finding(
        Finding.Severity.NOTE,
        "finger-gaps",
        "slats.gap",
        "the gaps between the slats can hold the finger of a child",
        figures.length(row.gap()),
        "not between " + figures.bit(HOLDS_FROM.inMm()) + " and " + figures.bit(HOLDS_TO.inMm()),
        "where children come near, set slats.gap="
            + new Spelling(rack.units()).length(narrower(rack)),
        "EN 16121, EN 14749 (from memory)");
  }

  /** On the increment; none at all where that is coarse. */
  private static Length narrower(Rack rack) {
    return HOLDS_FROM.snappedDown(rack.increment());
  }
}
