package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.design.drafting.Isometric.Cover;

/** Boxes and rods along y that share no space, and lines and curves among them. */
record IsometricSolids(IsometricBoxes boxes, List<IsometricRod> rods) {

  IsometricSolids {
    rods = List.copyOf(rods);
  }

  /** What solids that hide some of {@code box} cover. */
  List<Cover> before(Isometric box) {
    return Stream.concat(boxes.before(box).stream(), rodsBefore(box).map(rod -> (Cover) rod))
        .toList();
  }

  /** The outlines of what hides some of {@code box}. */
  List<List<Coordinate>> outlinesBefore(Isometric box) {
    return Stream.concat(
            boxes.boxesBefore(box).map(Isometric::outline),
            rodsBefore(box).map(IsometricRod::outline))
        .toList();
  }

  private Stream<IsometricRod> rodsBefore(Isometric box) {
    return rods.stream()
        .filter(rod -> rod.box().isBefore(box))
        .filter(rod -> rod.box().silhouette().overlaps(box.silhouette()));
  }

  /** The stretches of a curve that are seen, of something that {@code box} is around. */
  List<List<Coordinate>> seen(List<Coordinate> curve, Isometric box) {
    List<Cover> before = before(box);
    List<List<Coordinate>> stretches = new ArrayList<>();
    List<Coordinate> stretch = new ArrayList<>();
    for (int i = 1; i < curve.size(); i++) {
      Coordinate from = curve.get(i - 1);
      Coordinate to = curve.get(i);
      if (before.stream()
          .noneMatch(cover -> cover.holds((from.x + to.x) / 2, (from.y + to.y) / 2))) {
        if (stretch.isEmpty()) {
          stretch.add(from);
        }
        stretch.add(to);
      } else if (!stretch.isEmpty()) {
        stretches.add(stretch);
        stretch = new ArrayList<>();
      }
    }
    if (!stretch.isEmpty()) {
      stretches.add(stretch);
    }
    return stretches;
  }

  /** Whether the middle of a rod is seen. */
  boolean isSeen(IsometricRod rod) {
    Coordinate middle = rod.middle();
    return before(rod.box()).stream().noneMatch(cover -> cover.holds(middle.x, middle.y));
  }

  /** Whether {@code box} is what is seen at a place of the picture. */
  boolean isSeen(Isometric box, double a, double b) {
    return boxes.seenAt(a, b).filter(box::equals).isPresent()
        && before(box).stream().noneMatch(cover -> cover.holds(a, b));
  }
}
