package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * The height of the top shelf over the depth of the feet.
 *
 * <p>At most 4, shelving practice; above 6, ANSI MH16.1 asks that the anchors of industrial steel
 * racks are designed to hold the rack against a push at the top shelf. It goes by shape alone;
 * {@link TipOver} and {@link Slope} reckon.
 */
record Slenderness() implements Rule {

  private static final int MOST = 4;
  private static final int DESIGNED = 6;

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    Length height = topShelf(rack);
    double ratio = height.inMm() / rack.frameDepth().inMm();
    boolean holds = !height.isMoreThan(rack.frameDepth().times(MOST));
    Figures figures = new Figures(rack.lengths());
    Measure.Compared compared = figures.ratio().compare(ratio, MOST);
    return Stream.of(
        new Finding(
            holds ? Finding.Severity.NOTE : Finding.Severity.WARNING,
            "slenderness",
            "rack",
            ratio > DESIGNED
                ? "height of its top shelf over its depth; above 6 it stands by its anchors alone"
                : "height of its top shelf over its depth",
            compared.value(),
            compared.atMost(),
            holds ? "" : advice(rack, height),
            "shelving practice (4); ANSI MH16.1 (6)"));
  }

  private static Length topShelf(Rack rack) {
    List<Length> undersides = rack.railUndersides();
    return undersides
        .get(undersides.size() - 1)
        .plus(rack.rail().height())
        .plus(rack.slats().thickness());
  }

  private static String advice(Rack rack, Length height) {
    // negated twice, since dividedBy rounds down and the depth must not be short
    Length depth = height.negated().dividedBy(MOST).negated();
    double missing = depth.minus(rack.frameDepth()).inMm();
    return StandFree.orAnchor(Way.FORWARD.atLeast(rack, missing).stream().toList());
  }
}
