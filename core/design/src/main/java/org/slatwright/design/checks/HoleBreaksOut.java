package org.slatwright.design.checks;

import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.plan.Finding;

/**
 * Whether the wall of a hole breaks out of a face that the hole is not meant to open, found by
 * geometry; of each part once.
 */
final class HoleBreaksOut implements Rule {

  private static final String NAME = "hole-breaks-out";

  @Override
  public Stream<Finding> check(Design design) {
    return design.assembly().parts().stream().flatMap(part -> broken(design, part).stream());
  }

  private static Optional<Finding> broken(Design design, Part part) {
    Figures figures = new Figures(design.rack().lengths());
    return Inside.anyOf(part, design.assembly())
        .flatMap(
            drilled ->
                Walls.of(part.holes().stream().flatMapToDouble(hole -> walls(drilled, hole)))
                    .finding(
                        NAME,
                        part.name() + " " + part.mark(),
                        "holes break out of a face: wood beside them",
                        "little wood between holes and a face",
                        () -> "thinner dowels, or a thicker " + part.name(),
                        figures));
  }

  private static DoubleStream walls(Piece piece, Hole hole) {
    Bore bore = piece.bore(hole);
    Box box = piece.box();
    Rod rod = Rod.of(bore);
    return Stream.of(Direction.values())
        .filter(face -> face != bore.inward().opposite())
        .filter(face -> face != bore.inward() || !hole.through())
        .mapToDouble(face -> rod.woodTo(box, face));
  }
}
