package org.slatwright.design.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** Whether one sheet takes a few rectangles, by trying every place that need be tried. */
record EveryPlace(double width, double height, double spacing) {

  private static final double ROUNDING_MM = 1e-6;

  boolean takes(List<Polygon> shapes) {
    List<Envelope> boxes = shapes.stream().map(Polygon::getEnvelopeInternal).toList();
    return fits(new ArrayList<>(boxes), new ArrayList<>());
  }

  /** Whether there is room for one more beside those that lie there already. */
  boolean takesToo(Polygon shape, List<Envelope> placed) {
    return fits(new ArrayList<>(List.of(shape.getEnvelopeInternal())), new ArrayList<>(placed));
  }

  /** Pushed left and down, every box touches others or the edges on both sides. */
  private boolean fits(List<Envelope> left, List<Envelope> placed) {
    if (left.isEmpty()) {
      return true;
    }
    for (int i = 0; i < left.size(); i++) {
      List<Envelope> others = new ArrayList<>(left);
      Envelope box = others.remove(i);
      if (fits(box.getWidth(), box.getHeight(), others, placed)
          || fits(box.getHeight(), box.getWidth(), others, placed)) {
        return true;
      }
    }
    return false;
  }

  private boolean fits(double w, double h, List<Envelope> others, List<Envelope> placed) {
    TreeSet<Double> xs = new TreeSet<>(List.of(0.0));
    TreeSet<Double> ys = new TreeSet<>(List.of(0.0));
    placed.forEach(box -> xs.add(box.getMaxX() + spacing));
    placed.forEach(box -> ys.add(box.getMaxY() + spacing));
    for (double x : xs) {
      for (double y : ys) {
        Envelope box = new Envelope(x, x + w, y, y + h);
        if (isFree(box, placed)) {
          placed.add(box);
          boolean all = fits(others, placed);
          placed.remove(placed.size() - 1);
          if (all) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean isFree(Envelope box, List<Envelope> placed) {
    Envelope grown = new Envelope(box);
    grown.expandBy(spacing - ROUNDING_MM);
    return box.getMaxX() <= width + ROUNDING_MM
        && box.getMaxY() <= height + ROUNDING_MM
        && placed.stream().noneMatch(grown::intersects);
  }
}
