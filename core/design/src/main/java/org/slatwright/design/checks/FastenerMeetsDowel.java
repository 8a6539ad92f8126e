package org.slatwright.design.checks;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/**
 * Whether a brad or screw runs into the hole of a dowel, found in the model by geometry. One that
 * meets a dowel turns aside or splits it; one that only passes it still holds.
 */
final class FastenerMeetsDowel implements FixingLimit {

  private static final String NAME = "fastener-meets-dowel";

  @Override
  public Stream<Finding> check(Design design, UnaryOperator<String> others) {
    List<Inside.Pair> pairs = Inside.of(design.assembly()).shanksAtDowels().toList();
    String fasteners = Inside.plural(design.rack().fixing().kind());
    return Inside.Pair.walls(pairs)
        .finding(
            NAME,
            fasteners,
            fasteners + " run into dowels: wood between them",
            "little wood between " + fasteners + " and dowels",
            () -> advice(design.rack(), others.apply("")),
            new Figures(design.rack().lengths()))
        .stream();
  }

  private static String advice(Rack rack, String others) {
    String thinner = thinnerDowel(rack).map(change -> "set " + change).orElse("");
    return Stream.of(thinner, others)
        .filter(each -> !each.isEmpty())
        .collect(Collectors.joining(", or "));
  }

  /**
   * The thickest of the trade beside which a fastener has 1 mm of wood, and three diameters to the
   * side of the rail: then it is put there.
   */
  private static Optional<String> thinnerDowel(Rack rack) {
    Length step = rack.units().metricOrInch(Length.mm(2), Length.inches(1, 16));
    Length least = rack.units().metricOrInch(Length.mm(6), Length.inches(1, 4));
    Length room = rack.rail().width().minus(rack.fixing().diameter().times(7)).minus(Length.mm(2));
    Length thickest = room.snappedDown(step);
    return thickest.isLessThan(least) || !thickest.isLessThan(rack.joint().diameter())
        ? Optional.empty()
        : Optional.of("timber.dowel.diameter=" + new Spelling(rack.units()).length(thickest));
  }
}
