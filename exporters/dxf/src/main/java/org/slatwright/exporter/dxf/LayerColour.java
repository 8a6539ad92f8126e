package org.slatwright.exporter.dxf;

import org.slatwright.api.plan.Pattern.Operation;

/** A colour for each layer, as an AutoCAD Color Index. */
final class LayerColour {

  private LayerColour() {}

  /** Blue drills, green opens, red cuts out, grey is only read. */
  static int of(Operation operation) {
    return switch (operation) {
      case DRILL -> 5;
      case CUT_INSIDE -> 3;
      case CUT_OUTSIDE -> 1;
      case REFERENCE -> 8;
    };
  }
}
