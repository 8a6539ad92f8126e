package org.slatwright.design.drafting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.slatwright.design.drafting.Isometric.Cover;
import org.slatwright.design.drafting.Isometric.Silhouette;

/** Boxes that share no space, to be found by where they lie on the picture. */
final class IsometricBoxes {

  private final List<Isometric> boxes;
  private final STRtree index = new STRtree();

  IsometricBoxes(List<Isometric> boxes) {
    this.boxes = List.copyOf(boxes);
    for (Isometric box : boxes) {
      Silhouette covered = box.silhouette();
      index.insert(
          new Envelope(
              covered.a().low(), covered.a().high(), covered.b().low(), covered.b().high()),
          box);
    }
    index.build();
  }

  /** In the order in which they were given. */
  List<Isometric> all() {
    return boxes;
  }

  /** What boxes that hide some of {@code box} cover. */
  List<Cover> before(Isometric box) {
    return boxesBefore(box).<Cover>map(Isometric::silhouette).toList();
  }

  /** The boxes that hide some of {@code box}. */
  Stream<Isometric> boxesBefore(Isometric box) {
    Silhouette own = box.silhouette();
    return found(new Envelope(own.a().low(), own.a().high(), own.b().low(), own.b().high()))
        .filter(other -> other.isBefore(box) && other.silhouette().overlaps(own));
  }

  /** The box that is seen at a place of the picture. */
  Optional<Isometric> seenAt(double a, double b) {
    return found(new Envelope(a, a, b, b))
        .filter(box -> box.silhouette().holds(a, b))
        .max(Comparator.comparingDouble(box -> box.nearest(a, b)));
  }

  private Stream<Isometric> found(Envelope around) {
    List<?> found = index.query(around);
    return found.stream().map(Isometric.class::cast);
  }
}
