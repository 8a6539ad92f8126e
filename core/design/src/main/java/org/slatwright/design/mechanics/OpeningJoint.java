package org.slatwright.design.mechanics;

/**
 * Two pieces of wood face to face, of which one turns about an edge of the face and opens the
 * joint: what holds them together, a dowel or brads, pulls, and the wood presses back over a block
 * at that edge. Statics; glue on the face is left out, as is whatever pulls nearer to the edge.
 *
 * @param reach from the edge that presses to what pulls, mm
 * @param breadth of wood that presses, mm
 * @param bearing what that wood bears across the grain, MPa
 */
public record OpeningJoint(double reach, double breadth, double bearing) {

  /**
   * The moment in N·mm with a pull in N: {@code F·(y - a/2)} with a block of {@code a = F/(f·b)};
   * where that reaches what pulls, the wood gives first, and it is {@code f·b·y²/2}.
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
