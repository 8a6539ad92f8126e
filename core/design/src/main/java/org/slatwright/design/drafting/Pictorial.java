package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.View;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/**
 * The whole rack in isometric axonometry, its right sides shaded, as large as there is room for and
 * so to no scale: the room is that of the box around it.
 */
final class Pictorial {

  private final List<Piece> pieces;
  private final Isometric extent;
  private final double factor;
  private final double left;
  private final double bottom;

  /** In the middle of {@code room}. */
  Pictorial(Assembly assembly, PaperBox room) {
    this.pieces =
        assembly.pieces().stream().filter(piece -> piece.part().role() != Role.DOWEL).toList();
    this.extent = Isometric.of(assembly.extent());
    this.factor = Math.min(room.width() / extent.width(), room.height() / extent.height());
    this.left = room.left() + (room.width() - factor * extent.width()) / 2;
    this.bottom = room.bottom() + (room.height() - factor * extent.height()) / 2;
  }

  View view() {
    IsometricBoxes boxes =
        new IsometricBoxes(pieces.stream().map(Piece::box).map(Isometric::of).toList());
    List<List<IsometricEdge>> edges = IsometricLines.of(boxes);
    List<Figure> figures = new ArrayList<>();
    figures.add(shade(boxes, edges.stream().flatMap(List::stream).toList()));
    for (int i = 0; i < pieces.size(); i++) {
      if (!edges.get(i).isEmpty()) {
        figures.add(cluster(pieces.get(i), edges.get(i)));
      }
    }
    return new View("pictorial", "Pictorial view", Optional.empty(), figures);
  }

  private Figure shade(IsometricBoxes boxes, List<IsometricEdge> edges) {
    return new Figure.Cluster(
        "pictorial-shade",
        "right sides",
        IsometricFaces.rightSides(boxes, edges).stream().map(this::fill).toList());
  }

  private Figure fill(List<Coordinate> corners) {
    return new Figure.Fill(corners.stream().map(this::onPaper).toList(), Figure.Shade.TINT);
  }

  private Figure cluster(Piece piece, List<IsometricEdge> edges) {
    return new Figure.Cluster(
        "pictorial-" + piece.id(),
        piece.part().name() + " " + piece.id(),
        edges.stream().map(this::line).toList());
  }

  private Figure line(IsometricEdge edge) {
    return Figure.Polyline.line(onPaper(edge.start()), onPaper(edge.end()), LineKind.THIN);
  }

  private PaperPoint onPaper(Coordinate place) {
    return new PaperPoint(
        left + factor * (Isometric.right(place.x, place.y) - extent.leftmost()),
        bottom + factor * (Isometric.up(place.x, place.y) - extent.lowest()));
  }
}
