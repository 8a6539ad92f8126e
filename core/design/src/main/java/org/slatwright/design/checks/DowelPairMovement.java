package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.Moisture;
import org.slatwright.design.sizing.Rack;

/**
 * How far two dowels in one rail end want to part or close over the year. In the rail they lie
 * across its grain, in the upright along it, so that only the rail moves ({@link Moisture#change}
 * with the tangential coefficient, the worst). The limit of 0.5 mm, a quarter of a millimetre each,
 * is common practice, no source: about what glue line and holes give.
 */
final class DowelPairMovement implements Rule {

  private static final double LIMIT_MM = 0.5;

  @Override
  public Stream<Finding> check(Design design) {
    Rack rack = design.rack();
    return rack.joint().heights().size() < 2 ? Stream.empty() : Stream.of(finding(rack));
  }

  private static Finding finding(Rack rack) {
    double movement = movement(rack);
    boolean well = movement <= LIMIT_MM;
    Figures figures = new Figures(rack.lengths());
    Measure.Compared compared = figures.distance().compare(movement, LIMIT_MM);
    return new Finding(
        well ? Finding.Severity.NOTE : Finding.Severity.WARNING,
        "dowel-pair-movement",
        "joint.dowels",
        "the two dowels of a rail end are moved by the rail as it swells and shrinks, if built at %s"
                .formatted(figures.number(rack.climate().usual()))
            + " % moisture",
        compared.value(),
        compared.atMost(),
        well ? "" : "set joint.dowels=1, or take rails that stand less high",
        "Wood Handbook, chapter 13; limit: common practice, no source");
  }

  private static double movement(Rack rack) {
    return Math.max(change(rack, rack.climate().dampest()), -change(rack, rack.climate().driest()));
  }

  private static double change(Rack rack, double moisture) {
    return Moisture.change(
        spacing(rack).inMm(),
        rack.timber().species().tangential(),
        rack.climate().usual(),
        moisture);
  }

  private static Length spacing(Rack rack) {
    List<Length> heights = rack.joint().heights();
    return heights.get(heights.size() - 1).minus(heights.get(0));
  }
}
