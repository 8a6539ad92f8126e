package org.slatwright.design.outline;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * One of the areas that the edges of several overlapping areas cut the plane into.
 *
 * @param inside a point of it
 * @param sides around it, counter-clockwise, and clockwise around its holes: it lies on the left
 * @param triangles that fill it, each counter-clockwise, with no other corners than the sides have
 */
record Cell(Coordinate inside, List<Side> sides, List<List<Coordinate>> triangles) {

  /** Whole nanometres, as everything that is cut. */
  private static final PrecisionModel NANOMETRES = new PrecisionModel(1e6);

  /** From corner to corner. */
  record Side(Coordinate from, Coordinate to) {

    Side reversed() {
      return new Side(to, from);
    }
  }

  /** The bounded areas that the edges of {@code areas} enclose, in an order of their own. */
  static List<Cell> cut(List<Geometry> areas) {
    List<Geometry> edges = areas.stream().map(Geometry::getBoundary).toList();
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(UnaryUnionNG.union(edges, NANOMETRES));
    // The polygonizer's own order follows hash codes.
    return ((Collection<?>) polygonizer.getPolygons())
        .stream().map(cell -> (Polygon) ((Polygon) cell).norm()).sorted().map(Cell::of).toList();
  }

  private static Cell of(Polygon polygon) {
    List<Side> sides = new ArrayList<>(sides(polygon.getExteriorRing()));
    IntStream.range(0, polygon.getNumInteriorRing())
        .mapToObj(polygon::getInteriorRingN)
        .map(Cell::sides)
        .forEach(sides::addAll);
    return new Cell(polygon.getInteriorPoint().getCoordinate(), sides, triangles(polygon));
  }

  /** Rings in normal form have their polygon on the right. */
  private static List<Side> sides(LinearRing ring) {
    return IntStream.range(1, ring.getNumPoints())
        .mapToObj(i -> new Side(ring.getCoordinateN(i), ring.getCoordinateN(i - 1)))
        .toList();
  }

  private static List<List<Coordinate>> triangles(Polygon polygon) {
    Geometry triangles = PolygonTriangulator.triangulate(polygon);
    return IntStream.range(0, triangles.getNumGeometries())
        .mapToObj(i -> triangles.getGeometryN(i).getCoordinates())
        .map(ring -> Orientation.isCCW(ring) ? Stream.of(ring) : reversed(ring))
        .map(ring -> ring.limit(3).toList())
        .toList();
  }

  private static Stream<Coordinate> reversed(Coordinate[] ring) {
    return IntStream.range(0, ring.length).mapToObj(i -> ring[ring.length - 1 - i]);
  }
}
