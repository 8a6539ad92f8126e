package org.slatwright.design.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.math.Vector2D;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * The line that runs beside an outline at a distance: the way of the middle of a round cutter that
 * leaves the outline. Straight edges stay straight and arcs stay arcs; a corner that the cutter
 * goes around becomes an arc about that corner. What the cutter cannot reach is left out, so that
 * nothing lies closer to the outline than the distance.
 *
 * <p>Every edge is shifted, all are cut where they meet, and of the pieces those stay that are
 * nowhere too close (Held 1991, <i>On the Computational Geometry of Pocket Machining</i>, from
 * memory).
 */
public final class Offset {

  /** Far below a nanometre's worth of difference, far above the rounding of doubles. */
  static final double ROUNDING_MM = 1e-7;

  /** Shorter pieces come from rounding. */
  private static final double LEAST_PIECE_MM = 2e-6;

  /** Ends that belong together are closer than this. */
  private static final double LARGEST_GAP_MM = 0.005;

  private final List<Curve> edges;
  private final double distance;
  private final List<Shifted> shifted = new ArrayList<>();

  private Offset(List<Curve> edges, double distance) {
    this.edges = edges;
    this.distance = distance;
  }

  /**
   * Around the outline, outside it.
   *
   * @param distance greater than zero
   * @return counter-clockwise; a second path, clockwise, runs within a hollow whose mouth is too
   *     narrow
   */
  public static List<Outline.Path> outward(Outline.Path outline, Length distance) {
    return new Offset(curves(outline), distance.inMm()).paths();
  }

  /**
   * Within the outline.
   *
   * @param distance greater than zero
   * @return counter-clockwise; none where the outline is nowhere wider than twice the distance,
   *     several where it is so narrow in between
   */
  public static List<Outline.Path> inward(Outline.Path outline, Length distance) {
    return new Offset(reversed(curves(outline)), distance.inMm())
        .paths().stream().map(Offset::turnedBack).toList();
  }

  /**
   * On one side of the outline.
   *
   * @param distance greater than zero
   * @see #outward
   * @see #inward
   */
  public static List<Outline.Path> beside(Outline.Path outline, Side side, Length distance) {
    return side == Side.INSIDE ? inward(outline, distance) : outward(outline, distance);
  }

  /** A curve beside an edge, or around the corner between two, and what it runs beside. */
  private record Shifted(Curve curve, int first, int second) {}

  /** A piece of a shifted curve between two shares of its way. */
  private record Piece(Shifted of, double from, double to) {

    Vector2D at(double share) {
      return of.curve().at(from + (to - from) * share);
    }

    boolean isContinuedBy(Piece next) {
      return of == next.of && Math.abs(to - next.from) * of.curve().length() < LEAST_PIECE_MM;
    }
  }

  private List<Outline.Path> paths() {
    for (int i = 0; i < edges.size(); i++) {
      shift(i, (i + 1) % edges.size());
    }
    List<Piece> left =
        new ArrayList<>(shifted.stream().flatMap(this::pieces).filter(this::isClear).toList());
    List<Outline.Path> paths = new ArrayList<>();
    while (!left.isEmpty()) {
      path(closed(left)).ifPresent(paths::add);
    }
    return List.copyOf(paths);
  }

  /** Adds what runs beside an edge, and around its end where the next one turns away. */
  private void shift(int edge, int next) {
    edges.get(edge).onTheRight(distance).ifPresent(curve -> add(curve, edge, edge));
    Vector2D arrives = edges.get(edge).arrives();
    Vector2D setsOut = edges.get(next).setsOut();
    double turn = Math.atan2(Crossings.cross(arrives, setsOut), arrives.dot(setsOut));
    if (turn > ROUNDING_MM) {
      double start = arrives.rotateByQuarterCircle(-1).angle();
      add(new Curve.Bow(edges.get(edge).at(1), distance, start, turn), edge, next);
    }
  }

  private void add(Curve curve, int first, int second) {
    shifted.add(new Shifted(curve, first, second));
  }

  private Stream<Piece> pieces(Shifted whole) {
    double[] cuts =
        Stream.concat(
                Stream.of(0.0, 1.0),
                shifted.stream()
                    .filter(other -> other != whole)
                    .flatMap(other -> Crossings.of(whole.curve(), other.curve()).stream())
                    .map(whole.curve()::share))
            .mapToDouble(share -> Math.min(1, Math.max(0, share)))
            .sorted()
            .toArray();
    double least = LEAST_PIECE_MM / whole.curve().length();
    List<Piece> pieces = new ArrayList<>();
    double from = 0;
    for (double cut : cuts) {
      if (cut - from > least) {
        pieces.add(new Piece(whole, from, cut));
        from = cut;
      }
    }
    return pieces.stream();
  }

  /** Also from what lies just as near on the other side: a cutter that jams cuts no line twice. */
  private boolean isClear(Piece piece) {
    Vector2D middle = piece.at(0.5);
    return IntStream.range(0, edges.size())
            .filter(edge -> edge != piece.of().first() && edge != piece.of().second())
            .allMatch(edge -> edges.get(edge).distance(middle) > distance + ROUNDING_MM)
        && edges.get(piece.of().first()).distance(middle) > distance - ROUNDING_MM;
  }

  /** Takes pieces that follow one another to where the first of them starts. */
  private static List<Piece> closed(List<Piece> left) {
    List<Piece> run = new ArrayList<>(List.of(left.remove(0)));
    while (true) {
      Piece last = run.get(run.size() - 1);
      Piece next = nearest(last.at(1), left, run.get(0));
      if (next == run.get(0)) {
        return joined(run);
      }
      left.remove(next);
      run.add(next);
    }
  }

  private static Piece nearest(Vector2D end, List<Piece> left, Piece first) {
    Piece nearest = first;
    for (Piece piece : left) {
      if (piece.at(0).distance(end) < nearest.at(0).distance(end)) {
        nearest = piece;
      }
    }
    if (nearest.at(0).distance(end) > LARGEST_GAP_MM) {
      throw new IllegalStateException("an offset does not close at " + end);
    }
    return nearest;
  }

  /** Makes one of pieces that were cut where nothing was taken away. */
  private static List<Piece> joined(List<Piece> run) {
    List<Piece> joined = new ArrayList<>();
    for (Piece piece : run) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).isContinuedBy(piece)) {
        joined.set(last, new Piece(piece.of(), joined.get(last).from(), piece.to()));
      } else {
        joined.add(piece);
      }
    }
    int last = joined.size() - 1;
    if (last > 0 && joined.get(last).isContinuedBy(joined.get(0))) {
      Piece tail = joined.remove(last);
      joined.set(0, new Piece(tail.of(), tail.from(), joined.get(0).to()));
    }
    return joined;
  }

  /** Empty when rounding leaves no edge, or no area. */
  private static Optional<Outline.Path> path(List<Piece> run) {
    List<Point2> corners = run.stream().map(piece -> rounded(piece.at(0))).toList();
    List<Outline.Edge> edges = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      Point2 from = corners.get(i);
      Point2 to = corners.get((i + 1) % run.size());
      if (!from.equals(to)) {
        edges.add(edge(run.get(i).of().curve(), from, to));
      }
    }
    return edges.size() < 2 ? Optional.empty() : Optional.of(new Outline.Path(edges));
  }

  private static Outline.Path turnedBack(Outline.Path path) {
    List<Outline.Edge> edges = new ArrayList<>();
    for (Outline.Edge edge : path.edges()) {
      edges.add(0, edge(Curve.of(edge).reversed(), edge.to(), edge.from()));
    }
    return new Outline.Path(edges);
  }

  private static Outline.Edge edge(Curve curve, Point2 from, Point2 to) {
    return curve instanceof Curve.Bow bow
        ? new Outline.Arc(from, to, rounded(bow.centre()), bow.sweep() > 0)
        : new Outline.Line(from, to);
  }

  private static Point2 rounded(Vector2D point) {
    return new Point2(Length.roundedMm(point.getX()), Length.roundedMm(point.getY()));
  }

  private static List<Curve> curves(Outline.Path outline) {
    return outline.edges().stream().map(Curve::of).toList();
  }

  private static List<Curve> reversed(List<Curve> curves) {
    List<Curve> reversed = new ArrayList<>(curves.stream().map(Curve::reversed).toList());
    Collections.reverse(reversed);
    return reversed;
  }
}
