package org.slatwright.exporter.dxf;

import org.slatwright.api.model.Outline;

/** How much an edge of a contour bends, as the format states it. */
final class Bulge {

  private Bulge() {}

  /**
   * tan(θ/4) of the angle θ that the edge turns through: positive counter-clockwise, 1 for half a
   * circle, 0 for a straight edge (DXF Reference, LWPOLYLINE and VERTEX, group code 42).
   */
  static double of(Outline.Edge edge) {
    return edge instanceof Outline.Arc arc ? Math.tan(arc.sweep() / 4) : 0;
  }
}
