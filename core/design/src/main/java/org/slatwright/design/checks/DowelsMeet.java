package org.slatwright.design.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.plan.Finding;

/**
 * Whether two holes of a part run into one another: side by side, crossing, or from both ends of a
 * rail; found by geometry, of each part once.
 */
final class DowelsMeet implements Rule {

  private static final String NAME = "dowels-meet";

  @Override
  public Stream<Finding> check(Design design) {
    return design.assembly().parts().stream().flatMap(part -> meeting(design, part).stream());
  }

  private static Optional<Finding> meeting(Design design, Part part) {
    Figures figures = new Figures(design.rack().lengths());
    return Inside.anyOf(part, design.assembly())
        .flatMap(
            drilled ->
                Inside.Pair.walls(pairs(holes(drilled)))
                    .finding(
                        NAME,
                        part.name() + " " + part.mark(),
                        "dowel holes run into one another: wood between them",
                        "little wood between two dowel holes",
                        () ->
                            "dowels %s shorter in a rail, or thinner"
                                .formatted(
                                    figures.length(
                                        design
                                            .rack()
                                            .units()
                                            .metricOrInch(Length.mm(1), Length.inches(1, 16)))),
                        figures));
  }

  private static List<Rod> holes(Piece piece) {
    return piece.part().holes().stream().map(piece::bore).map(Rod::of).toList();
  }

  private static List<Inside.Pair> pairs(List<Rod> holes) {
    List<Inside.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      for (Rod other : holes.subList(i + 1, holes.size())) {
        pairs.add(new Inside.Pair(holes.get(i), other));
      }
    }
    return pairs;
  }
}
