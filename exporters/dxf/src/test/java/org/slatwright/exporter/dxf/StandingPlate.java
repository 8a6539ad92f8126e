package org.slatwright.exporter.dxf;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Jig;

/**
 * A plate where it stands in the jig, in mm along the axes of the jig.
 *
 * @param normal the axis that it is thick along
 * @param thick from one face to the other
 * @param section over the two other axes, in the order x, y, z
 */
record StandingPlate(String mark, Axis normal, Stretch thick, Polygon section) {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A part of an axis. */
  record Stretch(double low, double high) {

    Stretch shrunk(double by) {
      return new Stretch(low + by, high - by);
    }

    double length() {
      return high - low;
    }

    double middle() {
      return (low + high) / 2;
    }
  }

  /**
   * Where a plate passes through the plane of another.
   *
   * @param across along the normal of the one that passes
   * @param along the axis that both lie in
   */
  record Passage(Stretch across, Stretch along) {}

  /**
   * What is not yet called being in the way.
   *
   * @param wallMm where two faces meet
   * @param cornerMm beside an edge, where a cutter cannot cut a corner square
   */
  record Slack(double wallMm, double cornerMm) {}

  static StandingPlate of(Jig.Placed placed, Polygon wood) {
    Placement at = placed.placement();
    Axis normal = at.thickness().axis();
    double face = at.corner().along(normal).inMm();
    double other =
        at.toRack(new Point3(Length.ZERO, Length.ZERO, placed.plate().thickness()))
            .along(normal)
            .inMm();
    return new StandingPlate(
        placed.plate().mark(),
        normal,
        new Stretch(Math.min(face, other), Math.max(face, other)),
        (Polygon) ontoPlane(at, others(normal)).transform(wood));
  }

  private static AffineTransformation ontoPlane(Placement at, List<Axis> plane) {
    Axis u = plane.get(0);
    Axis v = plane.get(1);
    return new AffineTransformation(
        part(at.length(), u),
        part(at.width(), u),
        at.corner().along(u).inMm(),
        part(at.length(), v),
        part(at.width(), v),
        at.corner().along(v).inMm());
  }

  private static int part(Direction direction, Axis axis) {
    return direction.axis() == axis ? direction.sign() : 0;
  }

  private static List<Axis> others(Axis axis) {
    return Arrays.stream(Axis.values()).filter(other -> other != axis).toList();
  }

  /** Whether the two would have to be in one place. */
  boolean overlaps(StandingPlate other, Slack slack) {
    double wall = slack.wallMm();
    double corner = slack.cornerMm();
    if (normal == other.normal) {
      double shared =
          Math.min(thick.high(), other.thick.high()) - Math.max(thick.low(), other.thick.low());
      return shared > wall && section.buffer(-corner).intersects(other.section);
    }
    return meets(other, wall, corner, corner)
        || meets(other, corner, wall, corner)
        || meets(other, corner, corner, wall);
  }

  /** Whether it still does with so much taken off the faces that point each way. */
  private boolean meets(StandingPlate other, double through, double across, double along) {
    return passages(other, through).stream()
        .map(
            passage ->
                other.box(normal, passage.across.shrunk(across), passage.along.shrunk(along)))
        .anyMatch(other.section::intersects);
  }

  /** Where this one's tabs stand in the slots of another, which is square to it. */
  List<Passage> tabsIn(StandingPlate other, Slack slack) {
    Polygon filled = FACTORY.createPolygon(other.section.getExteriorRing());
    return passages(other, slack.cornerMm()).stream()
        .filter(
            passage -> {
              Point middle = other.box(normal, passage.across, passage.along).getCentroid();
              return filled.covers(middle) && !other.section.covers(middle);
            })
        .toList();
  }

  private List<Passage> passages(StandingPlate other, double through) {
    return wood(third(other.normal), other.thick.shrunk(through)).stream()
        .map(along -> new Passage(thick, along))
        .toList();
  }

  /**
   * How far a thing can move along one axis of this plate between the wood on both sides.
   *
   * @param size of the thing along that axis
   * @param beside where it is along the other axis of the plate
   */
  double play(Axis axis, Stretch size, Stretch beside) {
    List<Stretch> wood = wood(axis, beside);
    double below =
        wood.stream()
            .mapToDouble(Stretch::high)
            .filter(at -> at < size.middle())
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    double above =
        wood.stream()
            .mapToDouble(Stretch::low)
            .filter(at -> at > size.middle())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return above - below - size.length();
  }

  /** The axis that is normal to neither. */
  Axis third(Axis other) {
    return others(normal).stream().filter(axis -> axis != other).findFirst().orElseThrow();
  }

  /** Where there is wood along an axis, anywhere within a strip of the other one. */
  private List<Stretch> wood(Axis axis, Stretch strip) {
    Envelope all = section.getEnvelopeInternal();
    boolean first = others(normal).get(0) == axis;
    Stretch whole =
        first
            ? new Stretch(all.getMinX(), all.getMaxX())
            : new Stretch(all.getMinY(), all.getMaxY());
    Geometry within = section.intersection(box(axis, whole, strip));
    return IntStream.range(0, within.getNumGeometries())
        .mapToObj(i -> within.getGeometryN(i).getEnvelopeInternal())
        .filter(part -> part.getArea() > 0)
        .map(
            part ->
                first
                    ? new Stretch(part.getMinX(), part.getMaxX())
                    : new Stretch(part.getMinY(), part.getMaxY()))
        .toList();
  }

  /** A rectangle in the plane of this plate. */
  private Geometry box(Axis axis, Stretch along, Stretch other) {
    boolean first = others(normal).get(0) == axis;
    Stretch u = first ? along : other;
    Stretch v = first ? other : along;
    return FACTORY.toGeometry(new Envelope(u.low(), u.high(), v.low(), v.high()));
  }
}
