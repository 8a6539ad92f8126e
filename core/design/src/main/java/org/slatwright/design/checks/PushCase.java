package org.slatwright.design.checks;

/**
 * A push at the top of the rack from the front or the back, which the joints of all frames resist,
 * an equal share each. The slats that tie the frames together share it out.
 *
 * <p>Feet turn freely on the floor, so by virtual work {@code H·h = Σ M} over both joints of every
 * rail: uprights lean by one angle, which is also that by which every joint opens.
 */
record PushCase(JointCase joint) {

  /** 20 lbf at the top, BIFMA X5.9 (from a second hand); N. */
  static final double PUSH = 89;

  static final String SOURCE = "BIFMA X5.9 (from a second hand): 20 lbf at the top";

  /** What the joints of all frames may take, N. */
  double taken() {
    return joint.safeMoment() * joints() / joint.tallness();
  }

  /** On the dowel that pulls, N. */
  double pull() {
    return joint.pull(PUSH * joint.tallness() / joints());
  }

  private int joints() {
    return 2 * joint.rack().shelves() * joint.rack().frames();
  }
}
