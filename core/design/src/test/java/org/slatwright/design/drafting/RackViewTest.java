package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.drafting.DepthPicture.Eye;
import org.slatwright.design.drafting.DepthPicture.Pixels;

/** The views of the general arrangement against a depth buffer of the same boxes. */
class RackViewTest {

  private static final double LEFT = 30;
  private static final double BOTTOM = 40;
  private static final double LONGEST = 160;

  @Property(tries = 25)
  void linesAreVisibleWhereTheFaceThatIsSeenChangesAndNowhereElse(
      @ForAll("racks") Assembly rack, @ForAll Projection projection) {
    Seen seen = new Seen(rack, projection);
    Pixels borders = seen.picture.borders();
    Pixels drawn = seen.picture.drawn(seen.lines(LineKind.VISIBLE));
    assertTrue(borders.count() > 500, "enough is compared");
    borders.assertNear(drawn, "has no visible line but a change of faces");
    drawn.assertNear(borders, "has a visible line but no change of faces");
  }

  @Property(tries = 25)
  void everyEdgeThatIsNotVisibleIsDrawnHidden(
      @ForAll("racks") Assembly rack, @ForAll Projection projection) {
    Seen seen = new Seen(rack, projection);
    List<Coordinate[]> lines = new ArrayList<>(seen.lines(LineKind.VISIBLE));
    lines.addAll(seen.lines(LineKind.HIDDEN));
    Pixels drawn = seen.picture.drawn(lines);
    Pixels edges = new Pixels(seen.picture.columns(), seen.picture.rows());
    for (Piece piece : solids(rack)) {
      if (projection != Projection.TOP || piece.part().role() != Role.SLAT) {
        for (Coordinate at : seen.alongEdges(piece.box())) {
          edges.set(seen.picture.column(at.x), seen.picture.row(at.y));
        }
      }
    }
    assertTrue(edges.count() > 100, "enough is compared");
    edges.assertNear(drawn, "has an edge that is not drawn");
  }

  @Property(tries = 25)
  void aHiddenLineIsAnEdgeWithSomethingBeforeIt(
      @ForAll("racks") Assembly rack, @ForAll Projection projection) {
    Seen seen = new Seen(rack, projection);
    Pixels covered = new Pixels(seen.picture.columns(), seen.picture.rows());
    for (Piece piece : solids(rack)) {
      double depth = seen.nearest(piece.box());
      for (Coordinate at : seen.alongEdges(piece.box())) {
        int column = seen.picture.column(at.x);
        int row = seen.picture.row(at.y);
        if (seen.picture.isCoveredAround(column, row, depth)) {
          covered.set(column, row);
        }
      }
    }
    Pixels hidden = seen.picture.drawn(seen.lines(LineKind.HIDDEN));
    hidden.assertNear(covered, "has a hidden line but nothing before an edge");
  }

  @Property(tries = 25)
  void theEndOfADowelIsACircleWhereItIsSeen(
      @ForAll("racks") Assembly rack, @ForAll Projection projection) {
    Seen seen = new Seen(rack, projection);
    boolean onEnd = projection == Projection.FRONT;
    int expected = 0;
    for (Piece dowel : rack.pieces(Role.DOWEL)) {
      Box box = dowel.box();
      double[] end = {
        (box.low().x().inMm() + box.high().x().inMm()) / 2,
        box.low().y().inMm(),
        (box.low().z().inMm() + box.high().z().inMm()) / 2
      };
      expected += onEnd && !seen.picture.hides(end) ? 1 : 0;
    }
    assertEquals(expected, seen.circles());
  }

  @Provide
  Arbitrary<Assembly> racks() {
    return FramedRacks.solvable();
  }

  private static List<Piece> solids(Assembly rack) {
    return rack.pieces().stream().filter(piece -> piece.part().role() != Role.DOWEL).toList();
  }

  /** A rack as it is drawn and as the buffer has it. */
  private static final class Seen {

    private final Eye eye;
    private final DepthPicture.Place place;
    private final DepthPicture picture;
    private final List<Figure> figures;

    Seen(Assembly rack, Projection projection) {
      this.eye = Eye.valueOf(projection.name());
      Box extent = rack.extent();
      double longest =
          DoubleStream.of(
                  extent.size(Axis.X).inMm(),
                  extent.size(Axis.Y).inMm(),
                  extent.size(Axis.Z).inMm())
              .max()
              .orElseThrow();
      Scale scale = new Scale(1, (int) Math.ceil(longest / LONGEST));
      Coordinate low = new Coordinate(Double.MAX_VALUE, Double.MAX_VALUE);
      for (double[] corner : DepthPicture.corners(extent)) {
        Coordinate at = eye.project(corner);
        low = new Coordinate(Math.min(low.x, at.x), Math.min(low.y, at.y));
      }
      double factor = scale.factor();
      this.place =
          new DepthPicture.Place(
              eye, factor, new Coordinate(LEFT - factor * low.x, BOTTOM - factor * low.y));
      this.picture =
          new DepthPicture(
              place, new PaperBox(LEFT - 1, BOTTOM - 1, LEFT + LONGEST + 1, BOTTOM + LONGEST + 1));
      solids(rack).forEach(piece -> picture.addBox(piece.box()));
      this.figures = RackView.whole(rack, projection, scale, LEFT, BOTTOM).figures();
    }

    /** Of all pieces but dowels. */
    List<Coordinate[]> lines(LineKind kind) {
      List<Coordinate[]> lines = new ArrayList<>();
      for (Figure figure : figures) {
        Figure.Cluster cluster = (Figure.Cluster) figure;
        if (!cluster.title().startsWith("dowel")) {
          for (Figure drawn : cluster.figures()) {
            Figure.Polyline line = (Figure.Polyline) drawn;
            if (line.line() == kind) {
              lines.add(new Coordinate[] {at(line.points().get(0)), at(line.points().get(1))});
            }
          }
        }
      }
      return lines;
    }

    long circles() {
      return figures.stream()
          .flatMap(figure -> ((Figure.Cluster) figure).figures().stream())
          .filter(figure -> figure instanceof Figure.Circle)
          .count();
    }

    double nearest(Box box) {
      return DepthPicture.corners(box).stream().mapToDouble(eye::depth).max().orElseThrow();
    }

    /** Places along the outline of a box on the picture. */
    List<Coordinate> alongEdges(Box box) {
      Coordinate low = new Coordinate(Double.MAX_VALUE, Double.MAX_VALUE);
      Coordinate high = new Coordinate(-Double.MAX_VALUE, -Double.MAX_VALUE);
      for (double[] corner : DepthPicture.corners(box)) {
        Coordinate at = place.onPaper(corner);
        low = new Coordinate(Math.min(low.x, at.x), Math.min(low.y, at.y));
        high = new Coordinate(Math.max(high.x, at.x), Math.max(high.y, at.y));
      }
      Coordinate[] corners = {
        low, new Coordinate(high.x, low.y), high, new Coordinate(low.x, high.y), low
      };
      List<Coordinate> places = new ArrayList<>();
      for (int i = 1; i < corners.length; i++) {
        places.addAll(DepthPicture.along(new Coordinate[] {corners[i - 1], corners[i]}));
      }
      return places;
    }

    private static Coordinate at(PaperPoint point) {
      return new Coordinate(point.x(), point.y());
    }
  }
}
