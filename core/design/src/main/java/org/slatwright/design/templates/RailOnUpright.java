package org.slatwright.design.templates;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Point2;

/** Where a rail meets its upright, seen on the drilled face from outside, the floor end below. */
record RailOnUpright(Joint joint) {

  /** Above the floor end. */
  Length underside() {
    return above(joint.rail().box().low().z());
  }

  /** Above the floor end. */
  Length top() {
    return above(joint.rail().box().high().z());
  }

  /** From the lower left corner of the face; never wider than the face. */
  Extent extent() {
    Length one = fromLeft(joint.rail().box().low().x());
    Length other = fromLeft(joint.rail().box().high().x());
    return new Extent(
        new Point2(Length.min(one, other), underside()), new Point2(Length.max(one, other), top()));
  }

  private Length above(Length height) {
    return height.minus(joint.upright().box().low().z());
  }

  /** The face edge is at the right, so the width of the upright runs to the left. */
  private Length fromLeft(Length x) {
    Box standing = joint.upright().box();
    boolean leftIsLow = joint.upright().placement().width() == Direction.MINUS_X;
    Length inside = Length.min(standing.high().x(), Length.max(standing.low().x(), x));
    return leftIsLow ? inside.minus(standing.low().x()) : standing.high().x().minus(inside);
  }
}
