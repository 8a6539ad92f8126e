package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/** Places in whole millimetres. */
final class Points {

  private Points() {}

  static Point3 point(long x, long y, long z) {
    return new Point3(Length.mm(x), Length.mm(y), Length.mm(z));
  }

  static Point2 point(long x, long y) {
    return new Point2(Length.mm(x), Length.mm(y));
  }

  static Box box(Point3 low, Point3 high) {
    return new Box(low, high);
  }
}
