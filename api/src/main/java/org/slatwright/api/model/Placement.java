package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/**
 * Where a part stands in the rack: the rack point of the corner that is the origin of the part's
 * own axes, and the rack directions of the part's length and width. The thickness follows by the
 * right hand, so a placement never mirrors a part.
 *
 * @param corner the part's own origin, in rack coordinates
 * @param length the rack direction of the part's first axis
 * @param width the rack direction of the part's second axis; square to {@code length}
 */
public record Placement(Point3 corner, Direction length, Direction width) {

  public Placement {
    if (length.axis() == width.axis()) {
      throw new IllegalArgumentException(
          "length " + length + " and width " + width + " are parallel");
    }
  }

  /** The rack direction of the part's third axis. */
  public Direction thickness() {
    return length.cross(width);
  }

  /** A point of the part, in rack coordinates. */
  public Point3 toRack(Point3 own) {
    return corner.moved(length, own.x()).moved(width, own.y()).moved(thickness(), own.z());
  }

  /** The box that a shape placed here fills, in rack coordinates. */
  public Box box(Shape shape) {
    Point3 opposite = toRack(new Point3(shape.length(), shape.width(), shape.thickness()));
    return new Box(
        new Point3(
            Length.min(corner.x(), opposite.x()),
            Length.min(corner.y(), opposite.y()),
            Length.min(corner.z(), opposite.z())),
        new Point3(
            Length.max(corner.x(), opposite.x()),
            Length.max(corner.y(), opposite.y()),
            Length.max(corner.z(), opposite.z())));
  }
}
