package org.slatwright.design.jig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.Polygons;

/** Measures the sheet that is left standing between the openings of a plate and around them. */
final class Webs {

  private static final String EDGE = "edge";
  private static final String SLOT = "slot";
  private static final String GUIDE_HOLE = "guide hole";
  static final String TWO_GUIDE_HOLES = "two guide holes";

  /** The largest measure that goes whole into both 0.01 mm and 1/64 in; far below any sheet. */
  static final Length STEP = new Length(625);

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Webs() {}

  /**
   * What is left between two things.
   *
   * @param width zero when they touch or overlap; a multiple of {@link #STEP}, the nearest
   */
  record Web(Length width, String between) {

    /** Whether that is so beyond rounding. */
    boolean isNarrowerThan(Length least) {
      return width.plus(STEP).isLessThan(least);
    }
  }

  /** Every web of a plate, narrowest first. */
  static List<Web> of(Plate plate) {
    List<Opening> openings =
        Stream.concat(
                plate.openings().stream().map(Opening::of), plate.bores().stream().map(Opening::of))
            .toList();
    Polygon sheet = Polygons.of(plate.boundary());
    List<Web> webs = new ArrayList<>();
    for (int i = 0; i < openings.size(); i++) {
      webs.add(openings.get(i).toEdgeOf(sheet));
      for (int j = i + 1; j < openings.size(); j++) {
        webs.add(openings.get(i).to(openings.get(j)));
      }
    }
    return webs.stream().sorted(Comparator.comparing(Web::width)).toList();
  }

  /**
   * A slot as it is, or a round hole as its centre: a circle made of chords would be off.
   *
   * @param core what is {@code aroundMm} from the opening's edge everywhere
   */
  private record Opening(String name, Geometry core, double aroundMm) {

    static Opening of(Outline outline) {
      if (outline instanceof Outline.Circle circle) {
        double radius = circle.diameter().inMm() / 2;
        return new Opening(GUIDE_HOLE, centreOf(circle), radius);
      }
      return new Opening(SLOT, Polygons.of(outline), 0);
    }

    private static Point centreOf(Outline.Circle circle) {
      Point2 centre = circle.centre();
      return FACTORY.createPoint(new Coordinate(centre.x().inMm(), centre.y().inMm()));
    }

    Web toEdgeOf(Polygon sheet) {
      double toEdge = sheet.contains(core) ? sheet.getExteriorRing().distance(core) : 0;
      return web(toEdge - aroundMm, name + " and " + EDGE);
    }

    Web to(Opening other) {
      String between = name.equals(other.name) ? "two " + name + "s" : name + " and " + other.name;
      return web(core.distance(other.core) - aroundMm - other.aroundMm, between);
    }

    private static Web web(double mm, String between) {
      Length nearest = Length.roundedMm(Math.max(0, mm)).plus(STEP.half()).snappedDown(STEP);
      return new Web(nearest, between);
    }
  }
}
