package org.slatwright.design.drafting;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/**
 * Where an isometric picture lies on the sheet.
 *
 * @param left of the picture, in mm on the sheet
 * @param bottom of the picture
 * @param factor millimetres on paper for one of a length along an axis
 * @param leftmost what lies at {@code left}, in mm on the picture
 * @param lowest what lies at {@code bottom}
 */
record IsometricPaper(double left, double bottom, double factor, double leftmost, double lowest) {

  /** As large as {@code boxes} have room for in {@code room}, in the middle of it. */
  static IsometricPaper fitted(List<Isometric> boxes, PaperBox room) {
    double leftmost = boxes.stream().mapToDouble(Isometric::leftmost).min().orElseThrow();
    double lowest = boxes.stream().mapToDouble(Isometric::lowest).min().orElseThrow();
    double width =
        boxes.stream().mapToDouble(box -> box.leftmost() + box.width()).max().orElseThrow()
            - leftmost;
    double height =
        boxes.stream().mapToDouble(box -> box.lowest() + box.height()).max().orElseThrow() - lowest;
    double factor = Math.min(room.width() / width, room.height() / height);
    return new IsometricPaper(
        room.middleX() - factor * width / 2,
        room.middleY() - factor * height / 2,
        factor,
        leftmost,
        lowest);
  }

  /** A place of the picture, a and b as x and y. */
  PaperPoint at(Coordinate place) {
    return new PaperPoint(
        left + factor * (Isometric.right(place.x, place.y) - leftmost),
        bottom + factor * (Isometric.up(place.x, place.y) - lowest));
  }

  /** A stretch of an edge. */
  Figure line(IsometricEdge edge, LineKind kind) {
    return Figure.Polyline.line(at(edge.start()), at(edge.end()), kind);
  }

  /** A filled polygon. */
  Figure fill(List<Coordinate> corners, Figure.Shade shade) {
    return new Figure.Fill(corners.stream().map(this::at).toList(), shade);
  }
}
