package org.slatwright.design.packing;

/** A rectangle along the axes, in mm. */
record Box(double minX, double minY, double maxX, double maxY) {

  /** Turned a quarter counter-clockwise, with all that lies within 0 to {@code height} upwards. */
  Box turned(double height) {
    return new Box(height - maxY, minX, height - minY, maxX);
  }

  Box moved(double dx, double dy) {
    return new Box(minX + dx, minY + dy, maxX + dx, maxY + dy);
  }

  double area() {
    return (maxX - minX) * (maxY - minY);
  }
}
