package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.drawing.Figure;

/** How each piece of a joint is hatched where it is cut, alike in every section (ISO 128-3). */
enum JointWood {
  UPRIGHT(3.2),
  RAIL(2.4),
  SLAT(1.6),
  DOWEL(1);

  private final double pitch;

  JointWood(double pitch) {
    this.pitch = pitch;
  }

  List<Figure> hatch(PaperBox box) {
    return this == RAIL ? Hatch.falling(box, pitch) : Hatch.rising(box, pitch);
  }

  /** All of {@code box} but what lies in {@code spared}. */
  List<Figure> hatch(PaperBox box, List<Figure.Circle> spared) {
    return hatch(box).stream().flatMap(line -> Hatch.outside(line, spared).stream()).toList();
  }

  /** What lies in a circle. */
  List<Figure> hatch(Figure.Circle circle) {
    PaperBox around =
        new PaperBox(
            circle.centre().x() - circle.radius(),
            circle.centre().y() - circle.radius(),
            circle.centre().x() + circle.radius(),
            circle.centre().y() + circle.radius());
    return hatch(around).stream().flatMap(line -> Hatch.inside(line, circle).stream()).toList();
  }
}
