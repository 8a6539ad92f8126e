package org.slatwright.design.jig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.outline.Polygons;

/**
 * A flat thing in space: a section, thick along one axis. In mm.
 *
 * @param section over the two other axes, in the order x, y, z
 */
record Solid(String name, Axis normal, double low, double high, Geometry section) {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Surfaces that touch may share this much, for the rounding of doubles and chords. */
  private static final double TOUCH = 0.01;

  static List<Solid> of(Jig jig) {
    return IntStream.range(0, jig.placed().size())
        .mapToObj(i -> of(jig.placed().get(i), i))
        .toList();
  }

  private static Solid of(Jig.Placed placed, int index) {
    List<Outline> openings = new ArrayList<>(placed.plate().openings());
    openings.addAll(placed.plate().bores());
    Geometry section = Polygons.of(placed.plate().boundary(), openings);
    Axis normal = placed.placement().thickness().axis();
    for (Coordinate point : section.getCoordinates()) {
      Coordinate own = point.copy();
      Point2 at = onPlane(own, placed, normal);
      point.setX(at.x().inMm());
      point.setY(at.y().inMm());
    }
    section.geometryChanged();
    double one = placed.placement().corner().along(normal).inMm();
    double other =
        placed
            .placement()
            .toRack(new Point3(Length.ZERO, Length.ZERO, placed.plate().thickness()))
            .along(normal)
            .inMm();
    return new Solid(
        placed.plate().mark() + "#" + index,
        normal,
        Math.min(one, other),
        Math.max(one, other),
        section);
  }

  private static Point2 onPlane(Coordinate own, Jig.Placed placed, Axis normal) {
    Point3 point =
        placed
            .placement()
            .toRack(new Point3(Length.roundedMm(own.x), Length.roundedMm(own.y), Length.ZERO));
    List<Axis> axes = others(normal);
    return new Point2(point.along(axes.get(0)), point.along(axes.get(1)));
  }

  /** A box, as a solid that is thick along z. */
  static Solid box(String name, double x0, double x1, double y0, double y1, double z0, double z1) {
    Geometry section = FACTORY.toGeometry(new Envelope(x0, x1, y0, y1));
    return new Solid(name, Axis.Z, z0, z1, section);
  }

  Solid moved(Axis axis, double by) {
    if (axis == normal) {
      return new Solid(name, normal, low + by, high + by, section);
    }
    boolean first = others(normal).get(0) == axis;
    Geometry shifted =
        AffineTransformation.translationInstance(first ? by : 0, first ? 0 : by).transform(section);
    return new Solid(name, normal, low, high, shifted);
  }

  /** Whether the two share more than a touch of space. */
  boolean overlaps(Solid other) {
    if (normal == other.normal) {
      return share(low, high, other.low, other.high)
          && section.buffer(-TOUCH).intersects(other.section.buffer(-TOUCH));
    }
    Axis third = third(normal, other.normal);
    for (double[] mine : alongWithin(third, other.low, other.high)) {
      for (double[] its : other.alongWithin(third, low, high)) {
        if (share(mine[0], mine[1], its[0], its[1])) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Where this is found along {@code axis} between two planes square to the remaining one: each
   * stretch from its start to its end, in order.
   */
  List<double[]> alongWithin(Axis axis, double from, double to) {
    boolean first = others(normal).get(0) == axis;
    Envelope all = section.getEnvelopeInternal();
    Envelope strip =
        first
            ? new Envelope(all.getMinX() - 1, all.getMaxX() + 1, from + TOUCH, to - TOUCH)
            : new Envelope(from + TOUCH, to - TOUCH, all.getMinY() - 1, all.getMaxY() + 1);
    Geometry within = section.intersection(FACTORY.toGeometry(strip));
    List<double[]> stretches = new ArrayList<>();
    for (int i = 0; i < within.getNumGeometries(); i++) {
      Envelope part = within.getGeometryN(i).getEnvelopeInternal();
      if (!part.isNull()) {
        stretches.add(
            first
                ? new double[] {part.getMinX(), part.getMaxX()}
                : new double[] {part.getMinY(), part.getMaxY()});
      }
    }
    stretches.sort(Comparator.comparingDouble(stretch -> stretch[0]));
    return stretches;
  }

  private static boolean share(double low, double high, double otherLow, double otherHigh) {
    return Math.min(high, otherHigh) - Math.max(low, otherLow) > TOUCH;
  }

  private static List<Axis> others(Axis axis) {
    return List.of(Axis.values()).stream().filter(other -> other != axis).toList();
  }

  private static Axis third(Axis one, Axis other) {
    return Axis.values()[3 - one.ordinal() - other.ordinal()];
  }
}
