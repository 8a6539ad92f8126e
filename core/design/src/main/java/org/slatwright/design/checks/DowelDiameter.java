package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;

/**
 * Whether dowels are at most half as thick as the stock across them (WOOD magazine, tips for dowel
 * joinery). The third at least that woodworkers ask for is of boards glued edge to edge; here other
 * rules reckon what the dowels bear.
 */
final class DowelDiameter implements Rule {

  private static final String NAME = "dowel-diameter";

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    Length diameter = rack.joint().diameter();
    Length stock = thinnestAcross(rack);
    return diameter.isMoreThan(stock.half()) ? Stream.of(tooThick(rack, stock)) : Stream.empty();
  }

  private static Finding tooThick(Rack rack, Length stock) {
    Figures figures = new Figures(rack.lengths());
    Length diameter = rack.joint().diameter();
    return new Finding(
        Severity.WARNING,
        NAME,
        "dowels",
        "dowels more than half as thick as the stock leave only %s of wood on each side"
            .formatted(figures.length(stock.minus(diameter).half())),
        figures.length(diameter),
        "at most " + figures.length(stock.half()),
        JointRemedies.of(rack)
            .otherDowel(joint -> !joint.diameter().times(2).isMoreThan(stock))
            .map(change -> "set " + change)
            .orElse("take thicker stock: no usual dowel is thin enough for this one"),
        "WOOD magazine, tips for dowel joinery");
  }

  /** The thinnest stock that a dowel lies in, across the dowel. */
  private static Length thinnestAcross(Rack rack) {
    return Length.min(
        rack.upright().width(), Length.min(rack.rail().width(), rack.rail().height()));
  }
}
