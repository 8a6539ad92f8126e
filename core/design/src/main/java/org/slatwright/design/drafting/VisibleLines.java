package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.slatwright.api.model.Piece;
import org.slatwright.design.drafting.Projection.Rect;

/**
 * The lines of boxes seen from one side, each where it is first seen and nowhere twice.
 *
 * <p>Boxes that do not share space hide one another strictly by the depth of their nearest faces.
 * All edges run along the picture's axes, so what is hidden of an edge is a set of stretches of one
 * line, found in whole nanometres. A line that is seen takes precedence over a hidden one that
 * falls on it (ISO 128: visible before hidden).
 */
final class VisibleLines {

  /** A stretch of an edge of a piece. */
  record Stroke(Piece piece, boolean horizontal, long at, long from, long to, boolean visible) {}

  /** What a piece covers of the picture, and how far away. */
  record Solid(Piece piece, Rect cover, long depth) {}

  private record Line(boolean horizontal, long at) {}

  private record Edge(Solid solid, Line line, long from, long to) {}

  private final List<Solid> nearestFirst;
  private final STRtree index = new STRtree();
  private final Map<Line, Spans> drawn = new HashMap<>();

  private VisibleLines(List<Piece> pieces, Projection projection) {
    nearestFirst =
        solids(pieces, projection).stream().sorted(Comparator.comparingLong(Solid::depth)).toList();
    nearestFirst.forEach(solid -> index.insert(envelope(solid.cover()), solid));
  }

  /** All lines of {@code pieces}: first those seen, nearest first, then those hidden. */
  static List<Stroke> of(List<Piece> pieces, Projection projection) {
    return new VisibleLines(pieces, projection).strokes();
  }

  /** Each piece as it lies on the picture. */
  static List<Solid> solids(List<Piece> pieces, Projection projection) {
    return pieces.stream().map(piece -> solid(piece, projection)).toList();
  }

  /** Whether the middle of {@code piece} is seen, among {@code others}. */
  static boolean isSeen(Piece piece, List<Solid> others, Projection projection) {
    Solid own = solid(piece, projection);
    long u = own.cover().left() + own.cover().width() / 2;
    long v = own.cover().bottom() + own.cover().height() / 2;
    return others.stream()
        .filter(other -> other.depth() < own.depth())
        .map(Solid::cover)
        .noneMatch(c -> c.left() < u && u < c.right() && c.bottom() < v && v < c.top());
  }

  private static Solid solid(Piece piece, Projection projection) {
    return new Solid(piece, projection.cover(piece.box()), projection.depth(piece.box()));
  }

  private List<Stroke> strokes() {
    List<Edge> edges = nearestFirst.stream().flatMap(solid -> edges(solid).stream()).toList();
    List<Spans> hidden = edges.stream().map(this::covered).toList();
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      draw(edge, Spans.of(edge.from(), edge.to()).minus(hidden.get(i)), true, strokes);
    }
    for (int i = 0; i < edges.size(); i++) {
      draw(edges.get(i), hidden.get(i), false, strokes);
    }
    return strokes;
  }

  private void draw(Edge edge, Spans stretches, boolean visible, List<Stroke> strokes) {
    Spans before = drawn.getOrDefault(edge.line(), Spans.NONE);
    for (Spans.Span span : stretches.minus(before).spans()) {
      strokes.add(
          new Stroke(
              edge.solid().piece(),
              edge.line().horizontal(),
              edge.line().at(),
              span.from(),
              span.to(),
              visible));
    }
    drawn.put(edge.line(), before.plus(stretches));
  }

  private static List<Edge> edges(Solid solid) {
    Rect cover = solid.cover();
    return List.of(
        new Edge(solid, new Line(true, cover.bottom()), cover.left(), cover.right()),
        new Edge(solid, new Line(true, cover.top()), cover.left(), cover.right()),
        new Edge(solid, new Line(false, cover.left()), cover.bottom(), cover.top()),
        new Edge(solid, new Line(false, cover.right()), cover.bottom(), cover.top()));
  }

  private Spans covered(Edge edge) {
    Envelope around =
        edge.line().horizontal()
            ? new Envelope(edge.from(), edge.to(), edge.line().at(), edge.line().at())
            : new Envelope(edge.line().at(), edge.line().at(), edge.from(), edge.to());
    List<Spans.Span> covered = new ArrayList<>();
    for (Object found : index.query(around)) {
      Solid nearer = (Solid) found;
      if (nearer.depth() < edge.solid().depth() && crosses(nearer.cover(), edge.line())) {
        covered.add(along(nearer.cover(), edge.line()));
      }
    }
    return Spans.joined(covered).within(edge.from(), edge.to());
  }

  /** An edge of the nearer box itself hides nothing: it is drawn there. */
  private static boolean crosses(Rect cover, Line line) {
    return line.horizontal()
        ? cover.bottom() < line.at() && line.at() < cover.top()
        : cover.left() < line.at() && line.at() < cover.right();
  }

  private static Spans.Span along(Rect cover, Line line) {
    return line.horizontal()
        ? new Spans.Span(cover.left(), cover.right())
        : new Spans.Span(cover.bottom(), cover.top());
  }

  private static Envelope envelope(Rect rect) {
    return new Envelope(rect.left(), rect.right(), rect.bottom(), rect.top());
  }
}
