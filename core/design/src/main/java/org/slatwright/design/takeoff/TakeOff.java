package org.slatwright.design.takeoff;

import java.util.List;
import org.slatwright.api.measure.Area;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.sizing.Rack;

/** Takes off the quantities of a rack. */
public final class TakeOff {

  private TakeOff() {}

  /** What the rack weighs and what building it uses up. */
  public static Quantities of(Assembly assembly, Rack rack) {
    List<Piece> dowels = assembly.pieces(Role.DOWEL);
    return new Quantities(
        new Mass(0),
        assembly.extent().low(),
        List.of(),
        new Area(0),
        new Mass(0),
        dowels.size(),
        dowels.stream()
            .map(dowel -> dowel.part().shape().length())
            .reduce(Length.ZERO, Length::plus),
        assembly.fasteners().size());
  }
}
