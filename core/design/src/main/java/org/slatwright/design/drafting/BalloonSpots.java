package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/**
 * Finds where marks in balloons stand on a picture that is drawn already: clear of all its lines
 * and of each other, as near to their parts as that allows.
 */
final class BalloonSpots {

  private static final double RADIUS = 2.8;
  private static final double LETTERING = 2.5;
  private static final double AIR = 0.8;
  private static final double NEAREST = RADIUS + 3;
  private static final double STEP = 2;

  /** Clear of the directions along which an isometric picture has its lines. */
  private static final int WAYS = 24;

  private static final double FIRST_WAY = Math.PI / WAYS;

  /** A line that a leader crosses counts as much as so many mm of its length. */
  private static final double CROSSING = 3;

  /** Ends of leaders that are tried, those that lie clearest. */
  private static final int ENDS = 6;

  /** Of an end that is clearer than that nothing more is asked. */
  private static final double CLEAR = 3;

  private final STRtree lines = new STRtree();
  private final PaperBox room;
  private final List<Spot> taken = new ArrayList<>();

  private record Spot(Coordinate centre, LineSegment leader) {}

  /** A place for the end of a leader, and how far it is from any line. */
  private record End(Coordinate place, double clear) {}

  /** Within {@code room}, among {@code drawn}. */
  BalloonSpots(List<Figure> drawn, PaperBox room) {
    this.room = room.grown(-RADIUS, -RADIUS);
    drawn.forEach(this::add);
  }

  private void add(Figure figure) {
    if (figure instanceof Figure.Cluster cluster) {
      cluster.figures().forEach(this::add);
    } else if (figure instanceof Figure.Polyline line) {
      for (int i = 1; i < line.points().size(); i++) {
        LineSegment piece = new LineSegment(at(line.points().get(i - 1)), at(line.points().get(i)));
        lines.insert(new Envelope(piece.p0, piece.p1), piece);
      }
    }
  }

  private static Coordinate at(PaperPoint point) {
    return new Coordinate(point.x(), point.y());
  }

  /**
   * The balloon with that mark and its leader; nothing where there is no room for it at all.
   *
   * @param ends where the leader may end
   */
  List<Figure> balloon(String mark, List<PaperPoint> ends) {
    return best(ends).map(spot -> figures(mark, spot)).orElse(List.of());
  }

  private List<Figure> figures(String mark, Spot spot) {
    taken.add(spot);
    double x = spot.centre().x;
    double y = spot.centre().y;
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure.Circle(new PaperPoint(x, y), RADIUS, LineKind.THIN));
    figures.add(Paragraph.text(x, y - LETTERING / 2, LETTERING, mark, Figure.Align.MIDDLE));
    figures.addAll(
        Leaders.dotted(
            spot.leader().p0.x, spot.leader().p0.y, spot.leader().p1.x, spot.leader().p1.y));
    return figures;
  }

  private Optional<Spot> best(List<PaperPoint> ends) {
    List<Coordinate> clearest = clearest(ends);
    Optional<Spot> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    double farthest = Math.hypot(room.width(), room.height());
    for (double reach = NEAREST; reach < Math.min(least, farthest); reach += STEP) {
      for (Coordinate end : clearest) {
        for (int way = 0; way < WAYS; way++) {
          Spot spot = spot(end, reach, FIRST_WAY + way * 2 * Math.PI / WAYS);
          if (isFree(spot)) {
            double cost = reach + CROSSING * crossed(spot.leader());
            if (cost < least) {
              least = cost;
              best = Optional.of(spot);
            }
          }
        }
      }
    }
    return best;
  }

  private List<Coordinate> clearest(List<PaperPoint> ends) {
    return ends.stream()
        .map(BalloonSpots::at)
        .map(end -> new End(end, clearance(end, CLEAR)))
        .sorted(Comparator.comparingDouble(end -> -end.clear()))
        .limit(ENDS)
        .map(End::place)
        .toList();
  }

  private static Spot spot(Coordinate end, double reach, double way) {
    double dx = Math.cos(way);
    double dy = Math.sin(way);
    double leader = reach - RADIUS;
    return new Spot(
        new Coordinate(end.x + reach * dx, end.y + reach * dy),
        new LineSegment(end.x + leader * dx, end.y + leader * dy, end.x, end.y));
  }

  private boolean isFree(Spot spot) {
    return room.contains(new PaperPoint(spot.centre().x, spot.centre().y))
        && taken.stream().allMatch(other -> isFree(spot, other))
        && clearance(spot.centre(), RADIUS + AIR) >= RADIUS + AIR;
  }

  private static boolean isFree(Spot spot, Spot other) {
    return spot.centre().distance(other.centre()) >= 2 * RADIUS + AIR
        && other.leader().distance(spot.centre()) >= RADIUS + AIR
        && spot.leader().distance(other.centre()) >= RADIUS + AIR
        && spot.leader().distance(other.leader()) >= AIR;
  }

  /** How far a place is from all lines, but no more than {@code most}. */
  private double clearance(Coordinate place, double most) {
    Envelope around = new Envelope(place);
    around.expandBy(most);
    return near(around).mapToDouble(line -> line.distance(place)).reduce(most, Math::min);
  }

  private long crossed(LineSegment leader) {
    return near(new Envelope(leader.p0, leader.p1))
        .filter(line -> line.distance(leader) == 0)
        .count();
  }

  private Stream<LineSegment> near(Envelope around) {
    List<?> found = lines.query(around);
    return found.stream().map(LineSegment.class::cast);
  }
}
