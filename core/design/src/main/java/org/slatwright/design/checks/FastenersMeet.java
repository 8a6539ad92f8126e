package org.slatwright.design.checks;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/** Whether two brads or screws meet in the rail they are driven into, found by geometry. */
final class FastenersMeet implements FixingLimit {

  private static final String NAME = "fasteners-meet";

  @Override
  public Stream<Finding> check(Design design, UnaryOperator<String> others) {
    List<Inside.Pair> near = Inside.of(design.assembly()).shanksAtShanks().toList();
    String fasteners = Inside.plural(design.rack().fixing().kind());
    return Inside.Pair.walls(near)
        .finding(
            NAME,
            fasteners,
            fasteners + " run into one another: wood between them",
            "little wood between two " + fasteners,
            () -> others.apply("fewer at each bearing (joint.fixing.per-end), or wider slats"),
            new Figures(design.rack().lengths()))
        .stream();
  }
}
