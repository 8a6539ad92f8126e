package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;

/**
 * Whether dowels are a third to half as thick as the stock across them: half at most by WOOD
 * magazine (tips for dowel joinery), a third at least by common practice, no source. Below a third
 * it is a note alone, since what such a joint bears is reckoned too, and from 12 mm up not even
 * that, since hardly any dowel is sold thicker.
 */
final class DowelDiameter implements Rule {

  private static final String NAME = "dowel-diameter";
  private static final Length THICKEST = Length.mm(12);

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    Length diameter = rack.joint().diameter();
    Length stock = thinnestAcross(rack);
    if (diameter.isMoreThan(stock.half())) {
      return Stream.of(tooThick(rack, stock));
    }
    boolean thin = diameter.times(3).isLessThan(stock) && diameter.isLessThan(THICKEST);
    return thin ? Stream.of(thin(rack, stock)) : Stream.empty();
  }

  private static Finding tooThick(Rack rack, Length stock) {
    Figures figures = new Figures(rack.units());
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

  private static Finding thin(Rack rack, Length stock) {
    Figures figures = new Figures(rack.units());
    return new Finding(
        Severity.NOTE,
        NAME,
        "dowels",
        "dowels are thin for their stock; the forces on them are reckoned as they are",
        figures.length(rack.joint().diameter()),
        "usually %s to %s"
            .formatted(figures.distance(stock.inMm() / 3), figures.distance(stock.inMm() / 2)),
        JointRemedies.of(rack).thickerDowel(any -> true).map(change -> "set " + change).orElse(""),
        "common practice, no source");
  }

  /** The thinnest stock that a dowel lies in, across the dowel. */
  private static Length thinnestAcross(Rack rack) {
    return Length.min(
        rack.upright().width(), Length.min(rack.rail().width(), rack.rail().height()));
  }
}
