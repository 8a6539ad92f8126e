package org.slatwright.design.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/**
 * Whether enough wood is left around the dowel holes, from their centres: 1.5 diameters to an edge
 * and 3 to the next dowel (common practice, no source), 3 to the end of an upright, which the load
 * does not pull at (EN 1995-1-1, table 8.5, a_3,c, from memory).
 */
final class DowelEdges implements Rule {

  @Override
  public Stream<Finding> check(Design design) {
    return DowelWood.scarcest(design.assembly()).stream()
        .filter(wood -> !wood.isEnough())
        .map(wood -> finding(design.rack(), wood));
  }

  private static Finding finding(Rack rack, DowelWood wood) {
    Figures figures = new Figures(rack.lengths());
    return new Finding(
        Severity.WARNING,
        "dowel-edges",
        "dowel holes",
        "wood from the centre of %s, in %ss %s"
            .formatted(wood.name(), wood.part().name(), wood.part().mark()),
        figures.length(wood.size()),
        "at least " + figures.length(wood.least()),
        advice(rack),
        "common practice, no source; EN 1995-1-1, table 8.5 (from memory)");
  }

  private static String advice(Rack rack) {
    return Remedies.anyOf(
        List.of(JointRemedies.of(rack).otherDowel(DowelEdges::isRoomy), oneDowel(rack)));
  }

  private static Optional<String> oneDowel(Rack rack) {
    JointCase joint = JointCase.of(rack);
    return joint.count() > 1 && isRoomy(joint.withCount(1))
        ? Optional.of(
            "joint.dowels=1 with timber.dowel.diameter="
                + new Spelling(rack.units()).length(joint.diameter()))
        : Optional.empty();
  }

  private static boolean isRoomy(JointCase joint) {
    Rack rack = joint.rack();
    Length side = Length.min(rack.upright().width(), rack.rail().width()).half();
    Length foot = rack.foot().plus(joint.edge());
    Length top = rack.topAbove().plus(rack.slats().thickness()).plus(joint.edge());
    Length along = Length.min(foot, top);
    Length threeDiameters = joint.diameter().times(3);
    return joint.leavesWoodInTheRail()
        && !side.times(2).isLessThan(threeDiameters)
        && !along.isLessThan(threeDiameters);
  }
}
