package org.slatwright.design.mechanics;

import java.util.List;

/**
 * A beam that rests on its two ends and bears loads between them. Textbook statics: each load's
 * effect is added up.
 *
 * @param loads each between the ends of the beam
 */
public record PointLoaded(Beam beam, List<PointLoad> loads) {

  public PointLoaded {
    loads = List.copyOf(loads);
  }

  /**
   * Deflection in the middle of the beam, mm: of a load P at c from the nearer end {@code
   * P·c·(3L²-4c²)/(48·E·I) + P·c/(2·G·A′)}. Where the loads lie the same from both ends, no other
   * place sags more; however they lie, none bends down by 3 % more.
   */
  public double sagInTheMiddle() {
    double length = beam.length();
    double sag = 0;
    for (PointLoad load : loads) {
      double near = Math.min(load.at(), length - load.at());
      double bent = near * (3 * length * length - 4 * near * near) / (48 * beam.bendingStiffness());
      sag += load.force() * (bent + near / (2 * beam.shearStiffness()));
    }
    return sag;
  }

  /** The greatest bending stress, which is under one of the loads, MPa. */
  public double stress() {
    double moment = loads.stream().mapToDouble(PointLoad::at).map(this::moment).max().orElse(0);
    return moment / beam.section().modulus();
  }

  /** The greatest shear stress, at the end that bears more: 3/2·V/(b·h), MPa. */
  public double shearStress() {
    double left = 0;
    double right = 0;
    for (PointLoad load : loads) {
      right += load.force() * load.at() / beam.length();
      left += load.force() * (1 - load.at() / beam.length());
    }
    return 1.5 * Math.max(left, right) / (beam.section().breadth() * beam.section().depth());
  }

  private double moment(double at) {
    double moment = 0;
    for (PointLoad load : loads) {
      double left = Math.min(at, load.at());
      double right = beam.length() - Math.max(at, load.at());
      moment += load.force() * left * right / beam.length();
    }
    return moment;
  }
}
