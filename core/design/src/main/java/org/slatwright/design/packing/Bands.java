package org.slatwright.design.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Cuts a shape into level bands and takes from each how far the shape reaches in it, so that the
 * boxes cover the shape: exactly where its edges run along the axes, in steps where they do not.
 * Openings count as filled.
 */
final class Bands {

  /** A slanting edge is covered in this many steps. */
  private static final int STEPS = 4;

  /** Neighbours whose ends differ by less than this share of the width become one box. */
  private static final double ALIKE = 0.01;

  private static final double SAME_MM = 1e-6;

  private final Coordinate[] ring;
  private final double left;
  private final double bottom;
  private final double alike;

  private Bands(Polygon shape) {
    Envelope extent = shape.getEnvelopeInternal();
    this.ring = shape.getExteriorRing().getCoordinates();
    this.left = extent.getMinX();
    this.bottom = extent.getMinY();
    this.alike = ALIKE * extent.getWidth();
  }

  /** Boxes that cover the shape, as measured from the lower left corner of its extent. */
  static List<Box> of(Polygon shape) {
    Bands bands = new Bands(shape);
    List<Double> levels = bands.levels(shape.getEnvelopeInternal().getHeight());
    List<Box> boxes = new ArrayList<>();
    List<Box> below = List.of();
    for (int i = 1; i < levels.size(); i++) {
      List<Box> here = bands.within(levels.get(i - 1), levels.get(i));
      if (bands.alike(below, here)) {
        below = union(below, here);
      } else {
        boxes.addAll(below);
        below = here;
      }
    }
    boxes.addAll(below);
    return boxes;
  }

  /** The heights of all level edges, and steps where those lie far apart. */
  private List<Double> levels(double height) {
    TreeSet<Double> edges = new TreeSet<>(List.of(0.0, height));
    for (int i = 1; i < ring.length; i++) {
      if (Math.abs(ring[i].y - ring[i - 1].y) < SAME_MM) {
        edges.add(ring[i].y - bottom);
      }
    }
    List<Double> levels = new ArrayList<>(List.of(0.0));
    for (double edge : edges) {
      double last = levels.get(levels.size() - 1);
      int steps = (int) Math.ceil((edge - last) * STEPS / height);
      for (int step = 1; step <= steps && edge - last > SAME_MM; step++) {
        levels.add(step == steps ? edge : last + (edge - last) * step / steps);
      }
    }
    return levels;
  }

  /** What the shape reaches over between two heights: one box for each piece of it. */
  private List<Box> within(double low, double high) {
    List<double[]> reach = acrossTheMiddle((low + high) / 2);
    for (int i = 1; i < ring.length; i++) {
      addEdge(ring[i - 1], ring[i], low, high, reach);
    }
    reach.sort((a, b) -> Double.compare(a[0], b[0]));
    List<Box> boxes = new ArrayList<>();
    double[] open = reach.get(0);
    for (double[] next : reach) {
      if (next[0] > open[1] + SAME_MM) {
        boxes.add(new Box(open[0], low, open[1], high));
        open = next;
      }
      open[1] = Math.max(open[1], next[1]);
    }
    boxes.add(new Box(open[0], low, open[1], high));
    return boxes;
  }

  private List<double[]> acrossTheMiddle(double middle) {
    double[] crossings = new double[ring.length];
    int count = 0;
    for (int i = 1; i < ring.length; i++) {
      boolean above = ring[i].y - bottom > middle;
      if (above != ring[i - 1].y - bottom > middle) {
        crossings[count++] = x(ring[i - 1], ring[i], middle);
      }
    }
    Arrays.sort(crossings, 0, count);
    List<double[]> spans = new ArrayList<>();
    for (int i = 0; i + 1 < count; i += 2) {
      spans.add(new double[] {crossings[i], crossings[i + 1]});
    }
    return spans;
  }

  /** An edge reaches as far as its part between the two heights; a level one bounds only. */
  private void addEdge(
      Coordinate from, Coordinate to, double low, double high, List<double[]> reach) {
    double lowest = Math.max(low, Math.min(from.y, to.y) - bottom);
    double highest = Math.min(high, Math.max(from.y, to.y) - bottom);
    if (highest - lowest > SAME_MM) {
      double a = x(from, to, lowest);
      double b = x(from, to, highest);
      reach.add(new double[] {Math.min(a, b), Math.max(a, b)});
    }
  }

  private double x(Coordinate from, Coordinate to, double height) {
    double along = (height + bottom - from.y) / (to.y - from.y);
    return from.x + (to.x - from.x) * along - left;
  }

  private boolean alike(List<Box> below, List<Box> here) {
    if (below.size() != here.size()) {
      return false;
    }
    for (int i = 0; i < here.size(); i++) {
      double ends =
          Math.max(
              Math.abs(below.get(i).minX() - here.get(i).minX()),
              Math.abs(below.get(i).maxX() - here.get(i).maxX()));
      if (ends > alike) {
        return false;
      }
    }
    return true;
  }

  private static List<Box> union(List<Box> below, List<Box> here) {
    List<Box> boxes = new ArrayList<>();
    for (int i = 0; i < here.size(); i++) {
      Box low = below.get(i);
      Box high = here.get(i);
      boxes.add(
          new Box(
              Math.min(low.minX(), high.minX()),
              low.minY(),
              Math.max(low.maxX(), high.maxX()),
              high.maxY()));
    }
    return boxes;
  }
}
