package org.slatwright.api.plan;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;

/**
 * A flat piece cut from sheet.
 *
 * @param mark engraved on it, unique in the jig: {@code J1}
 * @param name what it does: {@code guide plate}
 * @param quantity how many
 * @param thickness of the sheet
 * @param boundary its edge; the lower left corner of its box is the origin
 * @param openings slots and cut-outs, each inside the boundary and clear of the others
 * @param bores round holes to drill
 */
public record Plate(
    String mark,
    String name,
    int quantity,
    Length thickness,
    Outline.Path boundary,
    List<Outline> openings,
    List<Outline.Circle> bores) {

  public Plate {
    openings = List.copyOf(openings);
    bores = List.copyOf(bores);
  }
}
