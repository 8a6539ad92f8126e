package org.slatwright.design.takeoff;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.mechanics.PointMass;
import org.slatwright.design.sizing.Rack;

/** Takes off the quantities of a rack. */
public final class TakeOff {

  /** As fine as a centre of gravity is told. */
  private static final Length FINEST = Length.mm(1).dividedBy(10);

  private TakeOff() {}

  /**
   * What the rack weighs and what building it uses up. Wood is reckoned at the middle of the
   * moisture contents of the rack's climate, dowels as beech; brads and screws weigh nothing.
   */
  public static Quantities of(Assembly assembly, Rack rack) {
    Scales scales = new Scales(new Densities(rack));
    PointMass whole = scales.weigh(assembly);
    return new Quantities(
        Mass.roundedKg(whole.kg()),
        new Point3(told(whole.x()), told(whole.y()), told(whole.z())),
        assembly.parts().stream().map(part -> each(part, scales)).toList(),
        Surface.of(assembly),
        GlueLine.of(assembly.joints()),
        assembly.pieces(Role.DOWEL).size(),
        rod(assembly.pieces(Role.DOWEL)),
        assembly.fasteners().size());
  }

  private static Quantities.PartMass each(Part part, Scales scales) {
    return new Quantities.PartMass(part, Mass.roundedKg(scales.kg(part)));
  }

  private static Length told(double mm) {
    return Length.roundedMm(mm).plus(FINEST.half()).snappedDown(FINEST);
  }

  private static Length rod(List<Piece> dowels) {
    return dowels.stream()
        .map(dowel -> dowel.part().shape().length())
        .reduce(Length.ZERO, Length::plus);
  }
}
