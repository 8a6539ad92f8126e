package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * Which clamps a frame is glued up with: over both uprights and a pad of waste wood under each jaw,
 * one in line with every rail, and one more where rails are so high that a single one would leave
 * their edges open. Common practice, no source.
 */
final class ClampOpening implements Rule {

  private static final Length HIGH_RAIL = Length.mm(100);

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    Figures figures = new Figures(rack.lengths());
    Length pad = rack.units().metricOrInch(Length.mm(20), Length.inches(3, 4));
    int aRail = rack.rail().height().isLessThan(HIGH_RAIL) ? 1 : 2;
    return Stream.of(
        new Finding(
            Finding.Severity.NOTE,
            "clamp-opening",
            "frame",
            "gluing a frame takes "
                + (aRail == 1 ? "one clamp" : "two clamps")
                + " a rail, "
                + aRail * rack.shelves()
                + " in all, over both uprights and a pad of "
                + figures.length(pad)
                + " at each jaw; they must open",
            "",
            "at least " + figures.length(rack.frameDepth().plus(pad.times(2))),
            "",
            "common practice, no source"));
  }
}
