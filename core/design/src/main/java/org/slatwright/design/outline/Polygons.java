package org.slatwright.design.outline;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * Outlines as JTS polygons, in mm, for asking about overlap and clearance; never for cutting.
 * Straight edges are exact; an arc becomes chords that leave it by at most {@link #TOLERANCE_MM}.
 */
public final class Polygons {

  /** The most by which a chord leaves its arc, in mm: finer than any machine that cuts sheet. */
  public static final double TOLERANCE_MM = 0.001;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Polygons() {}

  /** The area within an outline. */
  public static Polygon of(Outline outline) {
    return FACTORY.createPolygon(ring(outline));
  }

  /**
   * What is left of the area within {@code boundary} when the openings are cut out of it.
   *
   * @param openings each inside the boundary and clear of the others
   */
  public static Polygon of(Outline boundary, List<? extends Outline> openings) {
    return FACTORY.createPolygon(
        ring(boundary), openings.stream().map(Polygons::ring).toArray(LinearRing[]::new));
  }

  private static LinearRing ring(Outline outline) {
    List<Coordinate> points = new ArrayList<>();
    if (outline instanceof Outline.Path path) {
      path.edges().forEach(edge -> addStart(points, edge));
    } else if (outline instanceof Outline.Circle circle) {
      double radius = circle.diameter().inMm() / 2;
      addChords(points, circle.centre(), radius, 0, 2 * Math.PI);
    }
    points.add(points.get(0).copy());
    return FACTORY.createLinearRing(points.toArray(Coordinate[]::new));
  }

  private static void addStart(List<Coordinate> points, Outline.Edge edge) {
    points.add(new Coordinate(edge.from().x().inMm(), edge.from().y().inMm()));
    if (edge instanceof Outline.Arc arc) {
      double start = arc.angle(arc.from());
      List<Coordinate> chords = new ArrayList<>();
      addChords(chords, arc.centre(), arc.radiusMm(), start, arc.sweep());
      points.addAll(chords.subList(1, chords.size()));
    }
  }

  /** Adds where each chord of the arc starts. */
  private static void addChords(
      List<Coordinate> points, Point2 centre, double radius, double start, double sweep) {
    int chords = chords(radius, Math.abs(sweep));
    for (int i = 0; i < chords; i++) {
      double angle = start + sweep * i / chords;
      points.add(
          new Coordinate(
              centre.x().inMm() + radius * Math.cos(angle),
              centre.y().inMm() + radius * Math.sin(angle)));
    }
  }

  /** A chord that spans the angle a leaves its arc by r (1 - cos(a / 2)). */
  private static int chords(double radius, double sweep) {
    double cosine = Math.max(0, 1 - TOLERANCE_MM / radius);
    return Math.max(3, (int) Math.ceil(sweep / (2 * Math.acos(cosine))));
  }
}
