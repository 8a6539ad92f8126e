package org.slatwright.design.drafting;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.triangulate.polygon.PolygonHoleJoiner;
import org.slatwright.api.model.Axis;
import org.slatwright.design.drafting.IsometricEdge.Line;

/**
 * What is seen of the right sides of boxes. Visible edges part the picture into cells, and since
 * every face ends at edges, in each cell there is one face or nothing to be seen.
 */
final class IsometricFaces {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private IsometricFaces() {}

  /** The corners of each such cell, without an end that repeats the start. */
  static List<List<Coordinate>> rightSides(IsometricBoxes boxes, List<IsometricEdge> edges) {
    return rightSides(boxes, edges, box -> true);
  }

  /** The same of some boxes alone. */
  static List<List<Coordinate>> rightSides(
      IsometricBoxes boxes, List<IsometricEdge> edges, Predicate<Isometric> ofBox) {
    return cells(edges)
        .filter(cell -> isRightSide(cell, boxes, ofBox))
        .map(IsometricFaces::corners)
        .toList();
  }

  private static Stream<Polygon> cells(List<IsometricEdge> edges) {
    Polygonizer polygonizer = new Polygonizer();
    for (IsometricEdge edge : parted(edges)) {
      polygonizer.add(FACTORY.createLineString(new Coordinate[] {edge.start(), edge.end()}));
    }
    Collection<?> cells = polygonizer.getPolygons();
    // The polygonizer's own order follows hash codes.
    return cells.stream().map(cell -> (Polygon) ((Polygon) cell).norm()).sorted();
  }

  /**
   * The same edges, none of which goes on where another ends on it. No two cross: the farther one
   * would be hidden on one side by the box that the nearer one is an edge of.
   */
  private static List<IsometricEdge> parted(List<IsometricEdge> edges) {
    Map<Line, NavigableSet<Long>> ends = new HashMap<>();
    for (IsometricEdge edge : edges) {
      for (Axis axis : Axis.values()) {
        for (Coordinate end : List.of(edge.start(), edge.end())) {
          Line line = Line.through(end, axis);
          ends.computeIfAbsent(line, key -> new TreeSet<>()).add(line.along(end));
        }
      }
    }
    return edges.stream().flatMap(edge -> edge.parted(ends.get(edge.line()))).toList();
  }

  private static boolean isRightSide(
      Polygon cell, IsometricBoxes boxes, Predicate<Isometric> ofBox) {
    Coordinate inside = cell.getInteriorPoint().getCoordinate();
    return boxes
        .seenAt(inside.x, inside.y)
        .filter(box -> box.showsRightSide(inside.x, inside.y))
        .filter(ofBox)
        .isPresent();
  }

  /** A hole is joined to the outside by a cut of no width. */
  private static List<Coordinate> corners(Polygon cell) {
    Coordinate[] ring =
        cell.getNumInteriorRing() == 0
            ? cell.getExteriorRing().getCoordinates()
            : PolygonHoleJoiner.join(cell);
    return List.of(ring).subList(0, ring.length - 1);
  }
}
