package org.slatwright.design.checks;

import org.slatwright.api.measure.Length;
import org.slatwright.design.mechanics.Dowel;
import org.slatwright.design.mechanics.OpeningJoint;
import org.slatwright.design.sizing.DowelSizes;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.wood.Species;

/**
 * The joint of a rail end and an upright. All joints of a rack are made alike.
 *
 * @param rack the joint's
 * @param height of the rail, maybe another than the rack's, as the other sizes here
 * @param count of dowels in a joint
 * @param embedment of a dowel in the rail
 */
record JointCase(Rack rack, Length height, int count, Length diameter, Length embedment) {

  /** What dowels are reckoned as: beech, the usual turned hardwood (common practice, no source). */
  private static final String DOWEL_WOOD = "american beech";

  static JointCase of(Rack rack) {
    Rack.DowelJoint joint = rack.joint();
    return new JointCase(
        rack, rack.rail().height(), joint.heights().size(), joint.diameter(), joint.embedment());
  }

  JointCase withHeight(Length other) {
    return new JointCase(rack, other, count, diameter, embedment);
  }

  JointCase withCount(int other) {
    return new JointCase(rack, height, other, diameter, embedment);
  }

  JointCase withDowel(Length otherDiameter, Length otherEmbedment) {
    return new JointCase(rack, height, count, otherDiameter, otherEmbedment);
  }

  /** The moment that a joint may bear in the plane of its frame for a short while, N·mm. */
  double safeMoment() {
    return joint().moment(dowel().safeWithdrawal());
  }

  /** The pull on a dowel under such a moment, N. */
  double pull(double moment) {
    return joint().pull(moment);
  }

  double safePull() {
    return dowel().safeWithdrawal();
  }

  /** The force down or sideways that a joint may bear, N. */
  double safeForce() {
    return count * safeForceOfOne();
  }

  /**
   * The moment about the length of the rail that a joint may bear, N·mm: two dowels also push
   * sideways against each other.
   */
  double safeTwist() {
    double couple = count > 1 ? safeForceOfOne() * spacing().inMm() : 0;
    return count * dowel().safeTwist() + couple;
  }

  /** Of the uprights, from the floor up, if all that higher rails take makes them longer; mm. */
  double tallness() {
    Length higher = height.minus(rack.rail().height());
    return rack.upright().length().plus(higher.times(rack.shelves())).inMm();
  }

  /** Between the centres of two dowels. */
  Length spacing() {
    return DowelSizes.spacing(height, diameter, rack.increment());
  }

  /** From an edge of the rail to the centre of the nearest dowel. */
  Length edge() {
    return count == 1 ? height.half() : height.minus(spacing()).half();
  }

  /** One and a half diameters from its centre to the edges of the rail, three to the next dowel. */
  boolean leavesWoodInTheRail() {
    Length threeDiameters = diameter.times(3);
    return !edge().times(2).isLessThan(threeDiameters)
        && (count == 1 || !spacing().isLessThan(threeDiameters));
  }

  /** Shear of the dowel, or pressure of the dowel on the rail, across its grain. */
  private double safeForceOfOne() {
    return Math.min(dowel().safeShear(), bearing() * diameter.inMm() * embedment.inMm());
  }

  private OpeningJoint joint() {
    double breadth = Length.min(rack.rail().width(), rack.upright().width()).inMm();
    double pressed = Strength.pressedAtAPush(rack.timber(), rack.climate());
    return new OpeningJoint(height.minus(edge()).inMm(), breadth, pressed);
  }

  private Dowel dowel() {
    double depth = Length.min(embedment, rack.upright().depth()).inMm();
    return new Dowel(diameter.inMm(), depth, shear(rack.timber().species()), shear(dowelWood()));
  }

  private double bearing() {
    return rack.timber().crushing(rack.climate()) / Strength.LOAD_FACTOR;
  }

  /** Where it is unknown, that of the weakest of the same kind that is known. */
  private static double shear(Species species) {
    return species.shear().orElseGet(() -> weakest(species.kind()));
  }

  private static double weakest(Species.Kind kind) {
    return Species.all().stream()
        .filter(species -> species.kind() == kind)
        .flatMapToDouble(species -> species.shear().stream())
        .min()
        .orElseThrow();
  }

  private static Species dowelWood() {
    return Species.named(DOWEL_WOOD).orElseThrow();
  }
}
