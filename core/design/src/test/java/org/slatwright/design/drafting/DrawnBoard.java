package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.RectangleLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;

/**
 * A board as a cutting diagram shows it, read back from its lines.
 *
 * @param id of its cluster
 * @param factor mm on paper for one of the scale of its view
 * @param outline all of it
 * @param pieces the clusters of the pieces, in the order of the plan
 * @param leaders from their texts to their dots
 * @param words every line of lettering, the pieces' too
 * @param all of its lines and fills
 */
record DrawnBoard(
    String id,
    double factor,
    Envelope outline,
    List<DrawnPiece> pieces,
    List<Figure.Polyline> leaders,
    List<String> words,
    Envelope all) {

  /** A piece with what is written on it. */
  record DrawnPiece(String title, Envelope outline, List<String> words) {}

  /** Every board on a sheet. */
  static List<DrawnBoard> on(Sheet sheet) {
    return sheet.views().stream().flatMap(DrawnBoard::in).toList();
  }

  private static Stream<DrawnBoard> in(View view) {
    return view.figures().stream()
        .filter(Figure.Cluster.class::isInstance)
        .map(Figure.Cluster.class::cast)
        .map(board -> of(board, view.scale().orElseThrow().factor()));
  }

  private static DrawnBoard of(Figure.Cluster board, double factor) {
    return new DrawnBoard(
        board.id(),
        factor,
        outline(board.figures(), LineKind.VISIBLE),
        board.figures().stream()
            .filter(Figure.Cluster.class::isInstance)
            .map(figure -> piece((Figure.Cluster) figure))
            .toList(),
        leaders(board.figures()),
        flat(board)
            .filter(Figure.Text.class::isInstance)
            .map(text -> ((Figure.Text) text).text())
            .toList(),
        room(flat(board)));
  }

  private static Stream<Figure> flat(Figure figure) {
    return figure instanceof Figure.Cluster cluster
        ? cluster.figures().stream().flatMap(DrawnBoard::flat)
        : Stream.of(figure);
  }

  private static DrawnPiece piece(Figure.Cluster piece) {
    return new DrawnPiece(
        piece.title(),
        outline(piece.figures(), LineKind.THIN),
        piece.figures().stream()
            .filter(Figure.Text.class::isInstance)
            .map(figure -> ((Figure.Text) figure).text())
            .toList());
  }

  private static Envelope outline(List<Figure> figures, LineKind kind) {
    List<Envelope> boxes =
        figures.stream()
            .filter(Figure.Polyline.class::isInstance)
            .map(Figure.Polyline.class::cast)
            .filter(line -> line.closed() && line.line() == kind)
            .map(line -> room(Stream.of(line)))
            .toList();
    if (boxes.size() != 1) {
      throw new AssertionError(boxes.size() + " boxes where there is one");
    }
    return boxes.get(0);
  }

  /** A leader is followed by its dot. */
  private static List<Figure.Polyline> leaders(List<Figure> figures) {
    List<Figure.Polyline> leaders = new ArrayList<>();
    for (int i = 1; i < figures.size(); i++) {
      if (figures.get(i) instanceof Figure.Fill dot
          && dot.points().size() == 8
          && figures.get(i - 1) instanceof Figure.Polyline line) {
        if (figures.subList(i, figures.size()).stream()
            .anyMatch(Figure.Cluster.class::isInstance)) {
          throw new AssertionError("a leader lies under the pieces");
        }
        leaders.add(line);
      }
    }
    return leaders;
  }

  private static Envelope room(Stream<Figure> figures) {
    Envelope room = new Envelope();
    figures
        .flatMap(figure -> points(figure).stream())
        .forEach(point -> room.expandToInclude(new Coordinate(point.x(), point.y())));
    return room;
  }

  private static List<PaperPoint> points(Figure figure) {
    if (figure instanceof Figure.Polyline line) {
      return line.points();
    }
    return figure instanceof Figure.Fill fill ? fill.points() : List.of();
  }

  /** The border that nothing may leave. */
  static Envelope frame(Sheet sheet) {
    View frame =
        sheet.views().stream().filter(v -> v.id().equals("frame")).findFirst().orElseThrow();
    return outline(frame.figures(), LineKind.BORDER);
  }

  /** Whether a leader's dot lies there. */
  static boolean endsIn(Figure.Polyline leader, Envelope room) {
    PaperPoint end = leader.points().get(leader.points().size() - 1);
    return room.contains(end.x(), end.y());
  }

  /** Whether any part of a leader lies there. */
  static boolean crosses(Figure.Polyline leader, Envelope room) {
    for (int i = 1; i < leader.points().size(); i++) {
      PaperPoint from = leader.points().get(i - 1);
      PaperPoint to = leader.points().get(i);
      if (new RectangleLineIntersector(room)
          .intersects(new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y()))) {
        return true;
      }
    }
    return false;
  }
}
