package org.slatwright.design.checks;

import org.slatwright.design.mechanics.InchPound;

/**
 * A push at the top of the rack from the front or the back, which the joints of all frames resist,
 * an equal share each. The slats that tie the frames together share it out.
 *
 * <p>Feet turn freely on the floor, so by virtual work {@code H·h = Σ M} over both joints of every
 * rail: uprights lean by one angle, which is also that by which every joint opens.
 */
record PushCase(JointCase joint) {

  /** What ANSI/BIFMA X5.9 pushes the top of office storage with, 20 lbf; N. */
  static final double PUSH = 20 * InchPound.N_PER_LBF;

  static final String SOURCE = "ANSI/BIFMA X5.9, from a secondary source";

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
