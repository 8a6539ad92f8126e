package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Area;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Point3;

/**
 * What the rack weighs, and what building it uses up.
 *
 * @param mass of the empty rack, without glue and finish
 * @param centreOfGravity of the empty rack, in rack coordinates
 * @param parts the mass of one piece of each part, in the order of the parts list
 * @param finishArea every face that can be reached after assembly
 * @param glue for the joints, spread on both faces
 * @param dowels how many
 * @param dowelRod their lengths added up
 * @param fixings how many brads or screws
 */
public record Quantities(
    Mass mass,
    Point3 centreOfGravity,
    List<PartMass> parts,
    Area finishArea,
    Mass glue,
    int dowels,
    Length dowelRod,
    int fixings) {

  public Quantities {
    parts = List.copyOf(parts);
  }

  /**
   * What one piece weighs.
   *
   * @param each holes taken off
   */
  public record PartMass(Part part, Mass each) {}
}
