package org.slatwright.design.mechanics;

/**
 * What a nail or screw in side grain holds at the utmost: Wood Handbook (FPL-GTR-282, 2021),
 * chapter 8. For wood of a gravity of 0.29 to 0.74 that was dry when it was driven and stays so;
 * the average of tests, so a share of it is used.
 */
public sealed interface Fastening permits Nail, Screw {

  /** Of the shank, mm. */
  double diameter();

  /**
   * The pull along the shank that draws it out, N.
   *
   * @param gravity of the wood that holds it, oven-dry mass over volume at 12 % moisture
   * @param depth of nail, or of thread, in that wood, mm
   */
  double withdrawal(double gravity, double depth);

  /**
   * How much less is used of what tests gave: 5 to 6, the chapter's practice (from memory), and
   * here the greater of both; the design values of the NDS, 1380·G^2.5·D lbf an inch, are 1/5.7.
   */
  double SAFETY = 6;

  /** The least depth in the wood that holds it for its full lateral resistance, mm. */
  double leastDepth(double gravity);
}
