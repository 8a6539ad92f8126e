package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.model.Assembly;
import org.slatwright.design.drafting.Sight.Seen;

/** The drawn picture against a picture of points, each the nearest of all boxes on its own ray. */
class PictorialTest {

  private static final PaperBox ROOM = new PaperBox(20, 30, 140, 200);
  private static final double STEP = 1.7;

  /** Less than the picture of the finest difference of two sizes, in mm. */
  private static final double NUDGE = 0.0002;

  @Property(tries = 25)
  void aPlaceIsShadedExactlyWhereARightSideIsNearest(@ForAll("racks") Assembly rack) {
    Sight sight = new Sight(rack, ROOM);
    Drawn drawn = Drawn.of(rack);
    int shaded = 0;
    for (Coordinate place : places()) {
      if (drawn.isClearOfLines(place)) {
        boolean right = sight.at(place).side() == Sight.Side.RIGHT;
        shaded += right ? 1 : 0;
        assertEquals(right, drawn.isShaded(place), () -> place + ": " + sight.at(place));
      }
    }
    assertTrue(shaded > 0, "some right side is seen");
  }

  @Property(tries = 25)
  void wherePlacesShowDifferentFacesALineIsDrawnBetween(@ForAll("racks") Assembly rack) {
    Sight sight = new Sight(rack, ROOM);
    Drawn drawn = Drawn.of(rack);
    for (Coordinate place : places()) {
      Coordinate next = new Coordinate(place.x + STEP, place.y + STEP / 7);
      if (!sight.at(place).equals(sight.at(next))) {
        assertTrue(drawn.crosses(place, next), () -> sight.at(place) + " and " + sight.at(next));
      }
    }
  }

  @Property(tries = 25)
  void everyLineHasDifferentFacesOnItsTwoSides(@ForAll("racks") Assembly rack) {
    Sight sight = new Sight(rack, ROOM);
    for (Coordinate[] line : Drawn.of(rack).lines()) {
      for (double part : new double[] {0.013, 0.4871, 0.991}) {
        // A line may be so short that a nudge beside one end of it would lead past its corner.
        double nudge = Math.min(NUDGE, line[0].distance(line[1]) * Math.min(part, 1 - part) / 4);
        Seen one = sight.at(beside(line, part, nudge));
        assertNotEquals(
            one, sight.at(beside(line, part, -nudge)), () -> line[0] + " to " + line[1]);
      }
    }
  }

  @Property(tries = 25)
  void thePictureFillsItsRoomOneWayAndStaysInside(@ForAll("racks") Assembly rack) {
    Envelope drawn = new Envelope();
    for (Coordinate[] line : Drawn.of(rack).lines()) {
      drawn.expandToInclude(line[0]);
      drawn.expandToInclude(line[1]);
    }
    assertTrue(drawn.getMinX() > ROOM.left() - 1e-9 && drawn.getMaxX() < ROOM.right() + 1e-9);
    assertTrue(drawn.getMinY() > ROOM.bottom() - 1e-9 && drawn.getMaxY() < ROOM.top() + 1e-9);
    double wide = drawn.getWidth() / ROOM.width();
    double high = drawn.getHeight() / ROOM.height();
    assertTrue(Math.max(wide, high) > 0.8, () -> wide + " and " + high);
  }

  @Provide
  Arbitrary<Assembly> racks() {
    return FramedRacks.solvable();
  }

  private static List<Coordinate> places() {
    List<Coordinate> places = new ArrayList<>();
    for (double x = ROOM.left() + 0.31; x < ROOM.right(); x += STEP) {
      for (double y = ROOM.bottom() + 0.17; y < ROOM.top(); y += STEP) {
        places.add(new Coordinate(x, y));
      }
    }
    return places;
  }

  private static Coordinate beside(Coordinate[] line, double part, double by) {
    double dx = line[1].x - line[0].x;
    double dy = line[1].y - line[0].y;
    double length = Math.hypot(dx, dy);
    return new Coordinate(
        line[0].x + part * dx - by * dy / length, line[0].y + part * dy + by * dx / length);
  }

  /** What the view is drawn with. */
  private record Drawn(List<Coordinate[]> lines, List<Coordinate[]> fills) {

    static Drawn of(Assembly rack) {
      Drawn drawn = new Drawn(new ArrayList<>(), new ArrayList<>());
      new Pictorial(rack, ROOM).view().figures().forEach(drawn::add);
      return drawn;
    }

    private void add(Figure figure) {
      if (figure instanceof Figure.Cluster cluster) {
        cluster.figures().forEach(this::add);
      } else if (figure instanceof Figure.Polyline line) {
        lines.add(line.points().stream().map(Drawn::at).toArray(Coordinate[]::new));
      } else if (figure instanceof Figure.Fill fill) {
        List<Coordinate> ring = new ArrayList<>(fill.points().stream().map(Drawn::at).toList());
        ring.add(ring.get(0));
        fills.add(ring.toArray(Coordinate[]::new));
      }
    }

    private static Coordinate at(PaperPoint point) {
      return new Coordinate(point.x(), point.y());
    }

    boolean isShaded(Coordinate place) {
      return fills.stream().anyMatch(ring -> PointLocation.isInRing(place, ring));
    }

    boolean isClearOfLines(Coordinate place) {
      return lines.stream()
          .allMatch(line -> Distance.pointToSegment(place, line[0], line[1]) > NUDGE);
    }

    boolean crosses(Coordinate from, Coordinate to) {
      RobustLineIntersector crossing = new RobustLineIntersector();
      for (Coordinate[] line : lines) {
        crossing.computeIntersection(from, to, line[0], line[1]);
        if (crossing.hasIntersection()) {
          return true;
        }
      }
      return false;
    }
  }
}
