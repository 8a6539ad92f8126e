package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Part;
import org.slatwright.design.drafting.DepthPicture.Pixels;

/** The exploded view against a depth buffer of the same boxes and rods. */
class ExplodedViewTest {

  private static final PaperBox ROOM = new PaperBox(20, 60, 200, 280);

  @Property(tries = 20)
  void linesAreDrawnWhereTheFaceThatIsSeenChangesAndNowhereElse(@ForAll("racks") Assembly rack) {
    Explosion explosion = Explosion.of(rack);
    DepthPicture picture = picture(explosion);
    Pixels borders = picture.borders();
    Pixels drawn = picture.drawn(lines(drawnFigures(rack), ExplodedViewTest::isOfAPiece));
    assertTrue(borders.count() > 3000, "enough is compared");
    borders.assertNear(drawn, "has no line but a change of faces");
    drawn.assertNear(borders, "has a line but no change of faces");
  }

  @Property(tries = 20)
  void chainLinesRunFromPartToPartWhereNothingHidesThem(@ForAll("racks") Assembly rack) {
    Explosion explosion = Explosion.of(rack);
    DepthPicture picture = picture(explosion);
    DepthPicture.Place place = place(explosion);
    Pixels borders = picture.borders();
    Pixels drawn = picture.drawn(lines(drawnFigures(rack), id -> id.equals("exploded-ways")));
    int compared = 0;
    for (Box way : explosion.ways()) {
      double[] from = DepthPicture.at(way.low());
      double[] to = DepthPicture.at(way.high());
      for (int i = 1; i < 40; i++) {
        double[] point = new double[3];
        for (int axis = 0; axis < 3; axis++) {
          point[axis] = from[axis] + i / 40.0 * (to[axis] - from[axis]);
        }
        Coordinate at = place.onPaper(point);
        int column = picture.column(at.x);
        int row = picture.row(at.y);
        if (!borders.isNear(column, row) && !picture.hides(point)) {
          compared++;
          assertTrue(drawn.isNear(column, row), () -> "no chain line at " + at);
        }
      }
    }
    assertTrue(compared > 20, "enough is compared");
  }

  @Property(tries = 20)
  void everyPartThatIsShownHasItsMarkClearOfAllLines(@ForAll("racks") Assembly rack) {
    List<Figure> drawn = drawnFigures(rack);
    List<String> shown =
        Stream.concat(Explosion.of(rack).bars().stream(), Explosion.of(rack).dowels().stream())
            .map(part -> part.piece().part())
            .distinct()
            .map(Part::mark)
            .sorted()
            .toList();
    List<String> marks =
        drawn.stream()
            .filter(figure -> figure instanceof Figure.Text)
            .map(figure -> ((Figure.Text) figure).text())
            .sorted()
            .toList();
    assertEquals(shown, marks);
    List<Coordinate[]> lines = lines(drawn, id -> true);
    for (Figure figure : drawn) {
      if (figure instanceof Figure.Circle balloon) {
        Coordinate centre = at(balloon.centre());
        assertTrue(
            lines.stream()
                .allMatch(
                    line ->
                        new LineSegment(line[0], line[1]).distance(centre)
                            > balloon.radius() - 1e-6),
            () -> "a line crosses the balloon at " + centre);
      }
    }
  }

  @Property(tries = 20)
  void partsThatAreDrawnApartShareNoSpace(@ForAll("racks") Assembly rack) {
    List<Box> solids = Explosion.of(rack).solids().toList();
    for (int i = 0; i < solids.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertTrue(!solids.get(i).overlaps(solids.get(j)), "overlap");
      }
    }
  }

  @Property(tries = 20)
  void aWayIsAsLongAsItsPartsAreMoved(@ForAll("racks") Assembly rack) {
    Explosion explosion = Explosion.of(rack);
    long slatWays =
        explosion.ways().stream().filter(way -> way.low().y().equals(way.high().y())).count();
    long fasteners =
        rack.fasteners().stream()
            .filter(
                fastener ->
                    explosion.bars().stream()
                            .anyMatch(bar -> bar.piece().equals(fastener.through()))
                        && explosion.bars().stream()
                            .anyMatch(bar -> bar.piece().equals(fastener.into())))
            .count();
    assertEquals(fasteners, slatWays, "a line for each fastener");
    assertEquals(2 * explosion.dowels().size(), explosion.ways().size() - slatWays);
  }

  @Provide
  Arbitrary<Assembly> racks() {
    return FramedRacks.solvable();
  }

  private static DepthPicture.Place place(Explosion explosion) {
    return DepthPicture.Place.fitted(
        DepthPicture.Eye.ISOMETRIC,
        explosion.solids().toList(),
        ROOM.grown(-ExplodedView.BESIDE, 0));
  }

  private static DepthPicture picture(Explosion explosion) {
    DepthPicture picture = new DepthPicture(place(explosion), ROOM.grown(1, 1));
    explosion.bars().forEach(bar -> picture.addBox(bar.box()));
    explosion.dowels().forEach(dowel -> picture.addRod(dowel.box()));
    return picture;
  }

  private static List<Figure> drawnFigures(Assembly rack) {
    return new ExplodedView(Explosion.of(rack), ROOM).view().figures();
  }

  private static boolean isOfAPiece(String id) {
    return !List.of("exploded-ways", "exploded-holes", "exploded-shade", "").contains(id);
  }

  /** From corner to corner; of a break, which is drawn with teeth, from end to end. */
  private static List<Coordinate[]> lines(List<Figure> figures, Predicate<String> ofCluster) {
    List<Coordinate[]> lines = new ArrayList<>();
    for (Figure figure : figures) {
      if (figure instanceof Figure.Cluster cluster && ofCluster.test(cluster.id())) {
        for (Figure line : cluster.figures()) {
          if (line instanceof Figure.Polyline polyline) {
            addLines(lines, polyline);
          }
        }
      }
    }
    return lines;
  }

  private static void addLines(List<Coordinate[]> lines, Figure.Polyline polyline) {
    List<PaperPoint> points = polyline.points();
    boolean broken = points.size() > 2 && isZigzag(points);
    int step = broken ? points.size() - 1 : 1;
    for (int i = step; i < points.size(); i += step) {
      lines.add(new Coordinate[] {at(points.get(i - step)), at(points.get(i))});
    }
  }

  private static boolean isZigzag(List<PaperPoint> points) {
    LineSegment whole = new LineSegment(at(points.get(0)), at(points.get(points.size() - 1)));
    int one = whole.orientationIndex(at(points.get(1)));
    // A round end comes back to where it began, but for the last digit.
    return whole.getLength() > 1e-6
        && whole.orientationIndex(at(points.get(2))) == -one
        && one != 0;
  }

  private static Coordinate at(PaperPoint point) {
    return new Coordinate(point.x(), point.y());
  }
}
