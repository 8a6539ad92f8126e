package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Shape;

/**
 * A drilling jig matched to the measured stock, built from flat plates that key together.
 *
 * <p>Axes of the assembled jig, sitting on the upright as it stands in the frame: x across the
 * upright, y from its outer face towards the rail (so the guide is at negative y), z up. The origin
 * lies on the outer face, on the middle of its width, level with the rail edge that the register
 * rests on.
 *
 * @param plates each different plate once
 * @param placed every plate in its place; a plate's own axes are x along and y up its outline, its
 *     thickness third
 * @param guideDiameter of the guide holes
 * @param guideDepth how far the guide holds the bit
 * @param railEdgeToHoles from the rail edge that the register rests on to each hole's centre
 * @param clearance left on each side between the jig and the stock, so that it slides
 * @param use how to use it, one sentence a step
 */
public record Jig(
    List<Plate> plates,
    List<Placed> placed,
    Length guideDiameter,
    Length guideDepth,
    List<Length> railEdgeToHoles,
    Length clearance,
    List<String> use) {

  public Jig {
    plates = List.copyOf(plates);
    placed = List.copyOf(placed);
    railEdgeToHoles = List.copyOf(railEdgeToHoles);
    use = List.copyOf(use);
  }

  /**
   * One plate in its place.
   *
   * @param plate which
   * @param placement where its lower left back corner lies and which way its axes run, in jig axes
   */
  public record Placed(Plate plate, Placement placement) {

    /** The box that it fills, in jig axes. */
    public Box box() {
      Extent flat = Extent.of(plate.boundary());
      return placement.box(new Shape.Bar(flat.width(), flat.height(), plate.thickness()));
    }
  }
}
