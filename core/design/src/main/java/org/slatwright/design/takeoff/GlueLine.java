package org.slatwright.design.takeoff;

import java.util.List;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Shape;

/**
 * The glue of the joints, spread on both faces: the end of each rail without its holes and as much
 * of the upright, each dowel all round and the walls it touches.
 */
final class GlueLine {

  /**
   * Of PVA on each face, what is squeezed out and wiped off included: common practice, no source.
   */
  private static final double KG_PER_MM2 = 0.150 / 1e6;

  private static final int FACES = 2;

  private GlueLine() {}

  static Mass of(List<Joint> joints) {
    double area = joints.stream().mapToDouble(GlueLine::area).sum();
    return Mass.roundedKg(FACES * area * KG_PER_MM2);
  }

  private static double area(Joint joint) {
    Shape rail = joint.rail().part().shape();
    double end = rail.width().inMm() * rail.thickness().inMm();
    return end + joint.pins().stream().mapToDouble(GlueLine::gained).sum();
  }

  /** What a dowel adds around it, less the hole that it needs in the end. */
  private static double gained(Joint.Pin pin) {
    Shape dowel = pin.dowel().part().shape();
    double around = Math.PI * dowel.width().inMm() * dowel.length().inMm();
    double radius = pin.railHole().diameter().inMm() / 2;
    return around - Math.PI * radius * radius;
  }
}
