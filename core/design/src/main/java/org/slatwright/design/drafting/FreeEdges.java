package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.outline.Polygons;

/**
 * What the plates of a jig that are seen on edge leave to be seen of one that is seen flat, looking
 * along the frame.
 */
final class FreeEdges {

  /** An edge that lies on the edge of a plate in front of it is drawn with that plate. */
  private static final double TOUCHING_MM = 1e-6;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private FreeEdges() {}

  /** Runs of points to join by straight lines: the jig's y to the right, its z up. */
  static List<List<Point2>> of(Jig.Placed flat, List<Jig.Placed> onEdge) {
    Geometry covered =
        onEdge.stream()
            .map(plate -> face(plate.box()))
            .reduce(GEOMETRY.createPolygon(), Geometry::union);
    LineMerger merger = new LineMerger();
    merger.add(outline(flat).difference(covered.buffer(TOUCHING_MM)));
    List<List<Point2>> runs = new ArrayList<>();
    for (Object run : merger.getMergedLineStrings()) {
      runs.add(Arrays.stream(((Geometry) run).getCoordinates()).map(FreeEdges::point).toList());
    }
    return runs;
  }

  private static Geometry outline(Jig.Placed plate) {
    Box box = plate.box();
    return AffineTransformation.translationInstance(box.low().y().inMm(), box.low().z().inMm())
        .transform(Polygons.of(plate.plate().boundary()).getBoundary());
  }

  private static Geometry face(Box box) {
    return GEOMETRY.toGeometry(
        new Envelope(
            box.low().y().inMm(),
            box.high().y().inMm(),
            box.low().z().inMm(),
            box.high().z().inMm()));
  }

  private static Point2 point(Coordinate at) {
    return new Point2(Length.roundedMm(at.x), Length.roundedMm(at.y));
  }
}
