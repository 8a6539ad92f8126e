package org.slatwright.design.drafting;

import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;

/**
 * One of the directions that the rack is looked at from, and where its points then lie.
 *
 * <p>On the picture u runs to the right and v up, both in nanometres of the rack; {@code depth}
 * grows away from the eye.
 */
enum Projection {
  FRONT("Front", Direction.PLUS_X, Direction.PLUS_Z, Direction.PLUS_Y),
  LEFT("Left side", Direction.MINUS_Y, Direction.PLUS_Z, Direction.PLUS_X),
  RIGHT("Right side", Direction.PLUS_Y, Direction.PLUS_Z, Direction.MINUS_X),
  TOP("Top", Direction.PLUS_X, Direction.PLUS_Y, Direction.MINUS_Z);

  private final String title;
  private final Direction right;
  private final Direction up;
  private final Direction away;

  Projection(String title, Direction right, Direction up, Direction away) {
    this.title = title;
    this.right = right;
    this.up = up;
    this.away = away;
  }

  String title() {
    return title;
  }

  /** The way that the eye looks. */
  Direction away() {
    return away;
  }

  /** What a box covers on the picture. */
  Rect cover(Box box) {
    return new Rect(least(box, right), least(box, up), most(box, right), most(box, up));
  }

  /** How far the nearest face of a box is; only comparable within this projection. */
  long depth(Box box) {
    return least(box, away);
  }

  private static long least(Box box, Direction direction) {
    return direction.sign() > 0
        ? box.low().along(direction.axis()).nanometres()
        : -box.high().along(direction.axis()).nanometres();
  }

  private static long most(Box box, Direction direction) {
    return direction.sign() > 0
        ? box.high().along(direction.axis()).nanometres()
        : -box.low().along(direction.axis()).nanometres();
  }

  /** A rectangle on the picture, in nanometres. */
  record Rect(long left, long bottom, long right, long top) {

    long width() {
      return right - left;
    }

    long height() {
      return top - bottom;
    }
  }
}
