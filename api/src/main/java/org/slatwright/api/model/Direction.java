package org.slatwright.api.model;

/** One of the six ways along an axis. */
public enum Direction {
  PLUS_X(Axis.X, 1),
  MINUS_X(Axis.X, -1),
  PLUS_Y(Axis.Y, 1),
  MINUS_Y(Axis.Y, -1),
  PLUS_Z(Axis.Z, 1),
  MINUS_Z(Axis.Z, -1);

  private final Axis axis;
  private final int sign;

  Direction(Axis axis, int sign) {
    this.axis = axis;
    this.sign = sign;
  }

  /** The axis it runs along. */
  public Axis axis() {
    return axis;
  }

  /** 1 with the axis, -1 against it. */
  public int sign() {
    return sign;
  }

  /** The other way along the same axis. */
  public Direction opposite() {
    return of(axis, -sign);
  }

  /**
   * The direction that completes a right-handed system: this × {@code other} (not parallel to it).
   */
  public Direction cross(Direction other) {
    if (axis == other.axis) {
      throw new IllegalArgumentException(this + " and " + other + " are parallel");
    }
    int next = (axis.ordinal() + 1) % 3;
    boolean cyclic = other.axis.ordinal() == next;
    Axis third = Axis.values()[3 - axis.ordinal() - other.axis.ordinal()];
    return of(third, sign * other.sign * (cyclic ? 1 : -1));
  }

  private static Direction of(Axis axis, int sign) {
    return values()[2 * axis.ordinal() + (sign > 0 ? 0 : 1)];
  }
}
