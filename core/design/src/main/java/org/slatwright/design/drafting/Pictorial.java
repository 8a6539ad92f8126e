package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
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
  private final IsometricPaper paper;

  /** In the middle of {@code room}. */
  Pictorial(Assembly assembly, PaperBox room) {
    this.pieces =
        assembly.pieces().stream().filter(piece -> piece.part().role() != Role.DOWEL).toList();
    this.paper = IsometricPaper.fitted(List.of(Isometric.of(assembly.extent())), room);
  }

  /** Whether the thinnest piece is as thick on paper as a line: what is smaller is a blot. */
  boolean isClear() {
    double thinnest =
        pieces.stream()
            .mapToDouble(piece -> piece.part().shape().thickness().inMm())
            .min()
            .orElseThrow();
    return thinnest * paper.factor() >= LineKind.THIN.widthMm();
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
        IsometricFaces.rightSides(boxes, edges).stream()
            .map(corners -> paper.fill(corners, Figure.Shade.TINT))
            .toList());
  }

  private Figure cluster(Piece piece, List<IsometricEdge> edges) {
    return new Figure.Cluster(
        "pictorial-" + piece.id(),
        piece.part().name() + " " + piece.id(),
        edges.stream().map(edge -> paper.line(edge, LineKind.THIN)).toList());
  }
}
