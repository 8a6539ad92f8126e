package org.slatwright.design.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/**
 * Worked out by hand from statics, with the crushing of ponderosa pine across the grain, 4.0 MPa
 * (Wood Handbook, table 5-3), and a pull of 5894 N.
 */
class OpeningJointTest {

  private static final double PULL = 5894;

  /** The block would be 38.8 mm, more than 19: so 4.0 x 38 x 19² / 2 = 27.44 N·m. */
  @Test
  void inALowRailTheWoodGivesBeforeTheDowel() {
    assertEquals(27_436, new OpeningJoint(19, 38, 4).moment(PULL), 0.5);
  }

  /** The block is 38.78 mm: 5894 x (69.5 - 19.39) = 295.4 N·m. */
  @Test
  void inAHighRailTheDowelPullsOverALongArm() {
    assertEquals(295_365, new OpeningJoint(69.5, 38, 4).moment(PULL), 50);
  }

  @Property
  void theMomentOfAPullTakesThatPull(
      @ForAll @DoubleRange(min = 10, max = 100) double reach,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    OpeningJoint joint = new OpeningJoint(reach, 38, 0.8);
    double pull = share * 0.8 * 38 * reach;

    assertEquals(pull, joint.pull(joint.moment(pull)), 1e-6 * pull);
  }

  @Property
  void aStrongerPullOrAHigherRailNeverTakesLess(
      @ForAll @DoubleRange(min = 10, max = 100) double reach,
      @ForAll @DoubleRange(min = 0, max = 50) double more,
      @ForAll @DoubleRange(min = 1, max = 9000) double pull) {
    OpeningJoint joint = new OpeningJoint(reach, 38, 0.8);

    assertTrue(joint.moment(pull + more) >= joint.moment(pull));
    assertTrue(new OpeningJoint(reach + more, 38, 0.8).moment(pull) >= joint.moment(pull));
  }

  /** Where the wood gives, the arm is half of the reach: nothing can press nearer. */
  @Test
  void aMomentThatTheWoodDoesNotBearAsksForAPullThatIsStillTold() {
    OpeningJoint joint = new OpeningJoint(19, 38, 4);

    assertEquals(4 * 38 * 19, joint.pull(27_436), 0.001);
    assertEquals(2 * 50_000 / 19.0, joint.pull(50_000), 0.001);
  }
}
