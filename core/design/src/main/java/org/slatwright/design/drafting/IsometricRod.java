package org.slatwright.design.drafting;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.model.Axis;
import org.slatwright.design.drafting.Isometric.Cover;
import org.slatwright.design.drafting.Isometric.Silhouette;
import org.slatwright.design.drafting.IsometricEdge.Line;

/**
 * A round rod along y in an isometric picture: its ends are ellipses, of which the front one is
 * seen whole and the rear one half, and two lines touch both.
 */
final class IsometricRod implements Cover {

  private static final int STEPS = 12;

  /** Where the lines touch the ends, as an angle from x towards z. */
  private static final double TOUCHES = -Math.PI / 4;

  private final Isometric box;
  private final List<Coordinate> outline;

  /** That just fits into {@code box}; without length it is the mouth of a hole. */
  IsometricRod(Isometric box) {
    this.box = box;
    this.outline =
        Stream.concat(rear().stream(), arc(box.y().high(), STEPS, 2 * STEPS).stream()).toList();
  }

  /** Around it. */
  Isometric box() {
    return box;
  }

  /** The whole front end, from where one line touches it. */
  List<Coordinate> front() {
    return arc(box.y().high(), 0, 2 * STEPS);
  }

  /** The half of the rear end that is seen. */
  List<Coordinate> rear() {
    return arc(box.y().low(), 0, STEPS);
  }

  /** The two lines. */
  List<IsometricEdge> sides() {
    return Stream.of(0, STEPS)
        .map(
            step -> {
              Coordinate from = at(box.y().low(), step);
              Coordinate to = at(box.y().high(), step);
              return new IsometricEdge(
                  new Line(Axis.Y, Math.round(to.x)), Math.round(from.y), Math.round(to.y));
            })
        .toList();
  }

  /** The corners of what it covers, in order around it. */
  List<Coordinate> outline() {
    return outline;
  }

  private List<Coordinate> arc(long y, int from, int to) {
    return IntStream.rangeClosed(from, to).mapToObj(step -> at(y, step)).toList();
  }

  private Coordinate at(long y, int step) {
    double turn = TOUCHES + step * Math.PI / STEPS;
    double radius = box.x().size() / 2.0;
    double x = box.x().at(0.5) + radius * Math.cos(turn);
    double z = box.z().at(0.5) + radius * Math.sin(turn);
    return new Coordinate(x - z, y - z);
  }

  /** The middle of its axis. */
  Coordinate middle() {
    return new Coordinate(box.x().at(0.5) - box.z().at(0.5), box.y().at(0.5) - box.z().at(0.5));
  }

  @Override
  public Spans on(Line line) {
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    Coordinate origin = line.place(0);
    Coordinate one = line.place(1);
    for (int corner = 0; corner < outline.size(); corner++) {
      double inside = inside(corner, origin);
      double gain = inside(corner, one) - inside;
      if (gain > 0) {
        from = Math.max(from, -inside / gain);
      } else if (gain < 0) {
        to = Math.min(to, -inside / gain);
      } else if (inside <= 0) {
        return Spans.NONE;
      }
    }
    return Spans.of(Math.round(from), Math.round(to));
  }

  @Override
  public boolean holds(double a, double b) {
    Coordinate place = new Coordinate(a, b);
    return box.silhouette().holds(a, b)
        && IntStream.range(0, outline.size()).allMatch(corner -> inside(corner, place) > 0);
  }

  /** Greater than zero where {@code place} lies on the inner side of the edge from a corner. */
  private double inside(int corner, Coordinate place) {
    Coordinate from = outline.get(corner);
    Coordinate to = outline.get((corner + 1) % outline.size());
    return (to.y - from.y) * (place.x - from.x) - (to.x - from.x) * (place.y - from.y);
  }

  @Override
  public boolean covers(Silhouette other) {
    return false;
  }
}
