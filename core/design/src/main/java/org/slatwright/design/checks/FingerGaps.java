package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;
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
    Rack.SlatRow row = design.rack().slats();
    boolean holds =
        row.count() > 1 && row.gap().isMoreThan(HOLDS_FROM) && row.gap().isLessThan(HOLDS_TO);
    return holds ? Stream.of(finding(design.rack())) : Stream.empty();
  }

  private static Finding finding(Rack rack) {
    Figures figures = new Figures(rack.units());
    return new Finding(
        Finding.Severity.NOTE,
        "finger-gaps",
        "slats.gap",
        "the gaps between the slats can hold the finger of a child",
        figures.length(rack.slats().gap()),
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
