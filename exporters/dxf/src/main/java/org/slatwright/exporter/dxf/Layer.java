package org.slatwright.exporter.dxf;

import org.slatwright.api.plan.Pattern.Operation;

/** The layers of a file, in the order of their table. Each has a colour, an AutoCAD Color Index. */
enum Layer {
  DRILL(5),
  CUT_INSIDE(3),
  CUT_OUTSIDE(1),
  /** Single strokes into the surface. */
  ENGRAVE(6),
  /** Only read. */
  REFERENCE(8);

  private final int colour;

  Layer(int colour) {
    this.colour = colour;
  }

  /** Blue drills, green opens, red cuts out, magenta engraves, grey is only read. */
  int colour() {
    return colour;
  }

  static Layer of(Operation operation) {
    return switch (operation) {
      case DRILL -> DRILL;
      case CUT_INSIDE -> CUT_INSIDE;
      case CUT_OUTSIDE -> CUT_OUTSIDE;
      case REFERENCE -> REFERENCE;
    };
  }
}
