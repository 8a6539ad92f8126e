package org.slatwright.design.packing;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * A shape as a few boxes that cover it, its lower left corner at the origin. Boxes that keep their
 * distance keep the shapes within them at least as far apart, and are compared in no time; with
 * several of them an L still takes another into its arm.
 *
 * @param width of the shape, in mm
 * @param height of the shape, in mm
 */
record Cover(double width, double height, List<Box> boxes) {

  Cover {
    boxes = List.copyOf(boxes);
  }

  static Cover of(Polygon shape) {
    Envelope extent = shape.getEnvelopeInternal();
    return new Cover(extent.getWidth(), extent.getHeight(), Bands.of(shape));
  }

  /** Turned a quarter counter-clockwise. */
  Cover turned() {
    return new Cover(height, width, boxes.stream().map(box -> box.turned(height)).toList());
  }

  double area() {
    return boxes.stream().mapToDouble(Box::area).sum();
  }
}
