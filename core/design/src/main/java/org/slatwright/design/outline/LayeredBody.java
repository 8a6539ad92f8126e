package org.slatwright.design.outline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Solid;

/**
 * A body of flat layers on one another, as a closed surface of triangles.
 *
 * <p>All layers are cut along the edges of all the others, so that every triangle meets its
 * neighbours corner to corner. The body must not touch itself along a mere edge.
 */
public final class LayeredBody {

  private final List<Layer> layers;
  private final List<Cell> cells;
  private final Map<Point3, Integer> corners = new LinkedHashMap<>();
  private final List<Solid.Triangle> triangles = new ArrayList<>();

  private LayeredBody(List<Layer> layers) {
    this.layers = layers;
    this.cells = Cell.cut(layers.stream().map(Layer::area).toList());
  }

  /**
   * One layer.
   *
   * @param area one polygon or several that are clear of one another, in mm
   * @param thickness greater than zero
   */
  public record Layer(Geometry area, Length thickness) {

    boolean has(Cell cell) {
      return SimplePointInAreaLocator.locate(cell.inside(), area) == Location.INTERIOR;
    }
  }

  /**
   * The body that the layers make, the first at the bottom.
   *
   * @param name its output name
   * @param title what it is
   */
  public static Solid of(String name, String title, List<Layer> layers) {
    LayeredBody body = new LayeredBody(List.copyOf(layers));
    body.build();
    return new Solid(name, title, List.copyOf(body.corners.keySet()), body.triangles);
  }

  private void build() {
    List<Cell> below = List.of();
    Length height = Length.ZERO;
    for (Layer layer : layers) {
      List<Cell> here = cells.stream().filter(layer::has).toList();
      caps(below, here, height);
      Length top = height.plus(layer.thickness());
      walls(here, height, top);
      below = here;
      height = top;
    }
    caps(below, List.of(), height);
  }

  /** What one of two layers shows where the other does not cover it. */
  private void caps(List<Cell> below, List<Cell> above, Length height) {
    below.stream()
        .filter(cell -> !above.contains(cell))
        .flatMap(cell -> cell.triangles().stream())
        .forEach(t -> add(at(t.get(0), height), at(t.get(1), height), at(t.get(2), height)));
    above.stream()
        .filter(cell -> !below.contains(cell))
        .flatMap(cell -> cell.triangles().stream())
        .forEach(t -> add(at(t.get(2), height), at(t.get(1), height), at(t.get(0), height)));
  }

  /** Where a cell of the layer borders on none of it. */
  private void walls(List<Cell> cells, Length bottom, Length top) {
    Map<Cell.Side, Cell> bySide = new HashMap<>();
    cells.forEach(cell -> cell.sides().forEach(side -> bySide.put(side, cell)));
    cells.stream()
        .flatMap(cell -> cell.sides().stream())
        .filter(side -> !bySide.containsKey(side.reversed()))
        .forEach(side -> wall(side, bottom, top));
  }

  private void wall(Cell.Side side, Length bottom, Length top) {
    int from = at(side.from(), bottom);
    int to = at(side.to(), bottom);
    int overTo = at(side.to(), top);
    int overFrom = at(side.from(), top);
    add(from, to, overTo);
    add(from, overTo, overFrom);
  }

  private void add(int a, int b, int c) {
    triangles.add(new Solid.Triangle(a, b, c));
  }

  private int at(Coordinate point, Length height) {
    Point3 corner = new Point3(Length.roundedMm(point.x), Length.roundedMm(point.y), height);
    return corners.computeIfAbsent(corner, unseen -> corners.size());
  }
}
