package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/**
 * A box along the axes, from its lowest corner to its highest.
 *
 * @param low the corner with the least coordinates
 * @param high the corner with the greatest; not below {@code low} on any axis
 */
public record Box(Point3 low, Point3 high) {

  public Box {
    for (Axis axis : Axis.values()) {
      if (high.along(axis).isLessThan(low.along(axis))) {
        throw new IllegalArgumentException("a box from " + low + " to " + high + " is inside out");
      }
    }
  }

  /** Its extent along {@code axis}. */
  public Length size(Axis axis) {
    return high.along(axis).minus(low.along(axis));
  }

  /** Whether the two share more than a face, an edge or a corner. */
  public boolean overlaps(Box other) {
    for (Axis axis : Axis.values()) {
      if (!low.along(axis).isLessThan(other.high.along(axis))
          || !other.low.along(axis).isLessThan(high.along(axis))) {
        return false;
      }
    }
    return true;
  }

  /** The smallest box around both. */
  public Box around(Box other) {
    return new Box(
        new Point3(
            Length.min(low.x(), other.low.x()),
            Length.min(low.y(), other.low.y()),
            Length.min(low.z(), other.low.z())),
        new Point3(
            Length.max(high.x(), other.high.x()),
            Length.max(high.y(), other.high.y()),
            Length.max(high.z(), other.high.z())));
  }
}
