package org.slatwright.design.mechanics;

/**
 * A rail end against the side of an upright that turns about one of its edges: a dowel pulls, and
 * the wood presses back over a block at that edge. Statics; the glue on the end grain is left out,
 * as is a dowel nearer to the edge.
 *
 * @param reach from the edge that presses to the dowel that pulls, mm
 * @param breadth of wood that presses, mm
 * @param bearing what that wood bears across the grain, MPa
 */
public record DowelJoint(double reach, double breadth, double bearing) {

  /**
   * The moment in N·mm with a pull in N: {@code F·(y - a/2)} with a block of {@code a = F/(f·b)};
   * where that reaches the dowel the wood gives first, and it is {@code f·b·y²/2}.
   */
  public double moment(double pull) {
    double force = Math.min(pull, mostPull());
    return force * (reach - force / (2 * bearing * breadth));
  }

  /** The pull in N that a moment in N·mm takes; more than the wood bears, with the shortest arm. */
  public double pull(double moment) {
    double most = mostPull() * reach / 2;
    return moment < most ? mostPull() * (1 - Math.sqrt(1 - moment / most)) : 2 * moment / reach;
  }

  private double mostPull() {
    return bearing * breadth * reach;
  }
}
