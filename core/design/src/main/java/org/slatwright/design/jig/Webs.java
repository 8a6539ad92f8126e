package org.slatwright.design.jig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.Polygons;

/** Measures the sheet that is left standing between the openings of a plate and around them. */
final class Webs {

  private static final String EDGE = "edge";
  private static final String SLOT = "slot";
  private static final String GUIDE_HOLE = "guide hole";
  static final String TWO_GUIDE_HOLES = "two guide holes";
  private static final Length SHOWN_STEP = Length.roundedMm(0.01);

  private Webs() {}

  /**
   * What is left between two things.
   *
   * @param width zero when they touch or overlap; rounded to 0.01 mm
   */
  record Web(Length width, String between) {}

  /** Every web of a plate, narrowest first. */
  static List<Web> of(Plate plate) {
    List<Opening> openings =
        Stream.concat(
                plate.openings().stream().map(outline -> Opening.of(SLOT, outline)),
                plate.bores().stream().map(outline -> Opening.of(GUIDE_HOLE, outline)))
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

  private record Opening(String name, Geometry area) {

    static Opening of(String name, Outline outline) {
      return new Opening(name, Polygons.of(outline));
    }

    Web toEdgeOf(Polygon sheet) {
      double width = sheet.contains(area) ? sheet.getExteriorRing().distance(area) : 0;
      return web(width, name + " and " + EDGE);
    }

    Web to(Opening other) {
      String between = name.equals(other.name) ? "two " + name + "s" : name + " and " + other.name;
      return web(area.distance(other.area), between);
    }

    private static Web web(double mm, String between) {
      Length nearest = Length.roundedMm(mm).plus(SHOWN_STEP.half()).snappedDown(SHOWN_STEP);
      return new Web(nearest, between);
    }
  }
}
