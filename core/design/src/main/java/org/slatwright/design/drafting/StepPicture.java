package org.slatwright.design.drafting;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Piece;

/**
 * The rack as far as it is built, in isometric axonometry and to no scale; what a step puts in
 * place has its right sides shaded, all of it where the step adds nothing.
 *
 * @param shown the pieces to draw; at least one
 * @param added the ids of those that are new
 */
record StepPicture(List<Piece> shown, Set<String> added) {

  /** In the middle of {@code room}. */
  List<Figure> figures(PaperBox room) {
    Isometric around =
        Isometric.of(shown.stream().map(Piece::box).reduce(Box::around).orElseThrow());
    IsometricPaper paper = IsometricPaper.fitted(List.of(around), room);
    IsometricBoxes boxes = new IsometricBoxes(boxes(shown.stream()).toList());
    List<IsometricEdge> edges = IsometricLines.of(boxes).stream().flatMap(List::stream).toList();
    Set<Isometric> shaded =
        boxes(shown.stream().filter(this::isShaded)).collect(Collectors.toSet());
    return Stream.concat(
            IsometricFaces.rightSides(boxes, edges, shaded::contains).stream()
                .map(corners -> paper.fill(corners, Figure.Shade.TINT)),
            edges.stream().map(edge -> paper.line(edge, LineKind.THIN)))
        .toList();
  }

  private boolean isShaded(Piece piece) {
    return added.isEmpty() || added.contains(piece.id());
  }

  private static Stream<Isometric> boxes(Stream<Piece> pieces) {
    return pieces.map(Piece::box).map(Isometric::of);
  }
}
