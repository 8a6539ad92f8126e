package org.slatwright.api.model;

import org.slatwright.api.measure.Length;

/** A place in space, in whichever axes the owner names. */
public record Point3(Length x, Length y, Length z) {

  /** Where the three axes meet. */
  public static final Point3 ORIGIN = new Point3(Length.ZERO, Length.ZERO, Length.ZERO);

  /** This place moved {@code distance} in {@code direction}. */
  public Point3 moved(Direction direction, Length distance) {
    Length step = direction.sign() > 0 ? distance : distance.negated();
    return switch (direction.axis()) {
      case X -> new Point3(x.plus(step), y, z);
      case Y -> new Point3(x, y.plus(step), z);
      case Z -> new Point3(x, y, z.plus(step));
    };
  }

  /** The coordinate along {@code axis}. */
  public Length along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }
}
