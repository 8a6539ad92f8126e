package org.slatwright.design.drafting;

import java.util.Comparator;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/**
 * The joint that stands for all: at the rear of the left frame, on the lowest shelf, with the slats
 * that lie on its rail. Depths are measured from the outer face of the upright to the front.
 *
 * @param joint its pieces and pins
 * @param slats that bear on the rail, the nearest to the upright first
 * @param fasteners that hold them to the rail, the nearest to the upright first
 */
record JointShown(Joint joint, List<Piece> slats, List<Fastener> fasteners) {

  JointShown {
    slats = List.copyOf(slats);
    fasteners = List.copyOf(fasteners);
  }

  static JointShown of(Assembly assembly) {
    Joint joint = assembly.joints().stream().filter(JointShown::isRear).findFirst().orElseThrow();
    Box rail = joint.rail().box();
    Comparator<Length> nearest = Comparator.reverseOrder();
    return new JointShown(
        joint,
        assembly.pieces(Role.SLAT).stream()
            .filter(slat -> slat.box().low().z().equals(rail.high().z()))
            .filter(slat -> slat.box().low().x().isLessThan(rail.high().x()))
            .sorted(Comparator.comparing(slat -> slat.box().high().y(), nearest))
            .toList(),
        assembly.fasteners().stream()
            .filter(fastener -> fastener.into().equals(joint.rail()))
            .sorted(Comparator.comparing(fastener -> fastener.head().y(), nearest))
            .toList());
  }

  private static boolean isRear(Joint joint) {
    return !joint.upright().box().low().y().isLessThan(joint.rail().box().high().y());
  }

  Box upright() {
    return joint.upright().box();
  }

  Box rail() {
    return joint.rail().box();
  }

  List<Box> dowels() {
    return joint.pins().stream().map(pin -> pin.dowel().box()).toList();
  }

  /** How far in from the outer face of the upright a place is. */
  Length depth(Length y) {
    return upright().high().y().minus(y);
  }

  Length uprightDepth() {
    return upright().size(Axis.Y);
  }

  Length dowelLength() {
    return dowels().get(0).size(Axis.Y);
  }

  Length diameter() {
    return dowels().get(0).size(Axis.Z);
  }

  /** How far the dowels reach into the rail. */
  Length embedment() {
    return dowelLength().minus(uprightDepth());
  }

  /** How deep the rail is drilled. */
  Length holeDepth() {
    return joint.pins().get(0).railHole().depth();
  }

  /** The heights of the dowels' axes, lowest first. */
  List<Length> axes() {
    return dowels().stream().map(box -> box.low().z().plus(box.size(Axis.Z).half())).toList();
  }

  /** Where the dowels' axes lie across the frame. */
  Length axisX() {
    Box dowel = dowels().get(0);
    return dowel.low().x().plus(dowel.size(Axis.X).half());
  }

  Fastener fastener() {
    return fasteners.get(0);
  }

  /** How deep a fastener ends in the rail. */
  Length tip() {
    return fastener().head().z().minus(fastener().length());
  }

  /**
   * The depth at which the joint is cut across: in the dowels, and through the first fastener too
   * where that is well between their ends.
   */
  Length across() {
    Length fastener = depth(fastener().head().y());
    Length from = uprightDepth().plus(embedment().times(7).dividedBy(20));
    Length to = uprightDepth().plus(embedment().times(15).dividedBy(20));
    boolean between = !fastener.isLessThan(from) && !fastener.isMoreThan(to);
    return between ? fastener : uprightDepth().plus(embedment().half());
  }
}
