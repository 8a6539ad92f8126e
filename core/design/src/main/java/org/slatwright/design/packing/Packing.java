package org.slatwright.design.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Sheets of one size, and how close shapes may lie on them.
 *
 * @param widthMm of a sheet
 * @param heightMm of a sheet
 * @param spacingMm between two shapes
 */
public record Packing(double widthMm, double heightMm, double spacingMm) {

  /**
   * A place for each shape, in the order given, or empty when one is larger than a sheet.
   *
   * @param shapes in mm, each anywhere
   */
  public Optional<List<Spot>> place(List<Polygon> shapes) {
    List<Spot> spots = new ArrayList<>();
    for (Polygon shape : shapes) {
      Envelope box = shape.getEnvelopeInternal();
      if (box.getWidth() > widthMm || box.getHeight() > heightMm) {
        return Optional.empty();
      }
      spots.add(new Spot(spots.size(), 0, 0, false));
    }
    return Optional.of(List.copyOf(spots));
  }
}
