package org.slatwright.design.checks;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Point3;

/**
 * A round thing inside the wood, straight along an axis of the rack, with flat ends: a shank or a
 * hole. That a brad follows the grain and wanders is not modelled, which is one reason to leave
 * some wood between.
 */
record Rod(Point3 from, Direction way, Length length, Length diameter) {

  /** Wood that shall stay beside anything inside it: our own choice, for a drill that runs off. */
  static final double WALL = 1;

  /** What two sizes rounded to the nanometre may be off together, mm. */
  static final double ROUNDING = 2e-6;

  static Rod of(Fastener fastener) {
    return new Rod(fastener.head(), fastener.inward(), fastener.length(), fastener.diameter());
  }

  static Rod of(Bore bore) {
    return new Rod(bore.mouth(), bore.inward(), bore.depth(), bore.diameter());
  }

  /**
   * How much wood lies between the two, mm; below zero where one runs into the other. Exact for
   * parallel ones and for crossing ones, unless they pass at the end of the other, where this one
   * is taken as square: there it may be up to a fifth of its thickness too little.
   */
  double woodTo(Rod other) {
    boolean parallel = axis() == other.axis();
    double beside = -other.radius() - (parallel ? radius() : 0);
    double square = 0;
    double deepest = Double.NEGATIVE_INFINITY;
    for (Axis each : Axis.values()) {
      if (each != other.axis()) {
        double gap = gap(each, other, parallel ? 0 : reach(each));
        square += Math.max(0, gap) * Math.max(0, gap);
        deepest = Math.max(deepest, gap);
      }
    }
    beside += square > 0 ? Math.sqrt(square) : Math.min(0, deepest);
    double along = gap(other.axis(), other, reach(other.axis()));
    return beside > 0 && along > 0 ? Math.hypot(beside, along) : Math.max(beside, along);
  }

  /** How much wood lies between it and that face of a box, mm; below zero where it stands out. */
  double woodTo(Box box, Direction face) {
    return face.sign() > 0
        ? mm(box.high(), face.axis()) - highest(face.axis())
        : lowest(face.axis()) - mm(box.low(), face.axis());
  }

  /** Its least coordinate along an axis, mm. */
  double lowest(Axis each) {
    return low(each) - reach(each);
  }

  /** Its greatest coordinate along an axis, mm. */
  double highest(Axis each) {
    return high(each) + reach(each);
  }

  Axis axis() {
    return way.axis();
  }

  private double gap(Axis each, Rod other, double reach) {
    return Math.max(low(each) - other.high(each), other.low(each) - high(each)) - reach;
  }

  /** How far it reaches out from the line of its middle, along an axis. */
  private double reach(Axis each) {
    return each == axis() ? 0 : radius();
  }

  private double radius() {
    return diameter.inMm() / 2;
  }

  private double low(Axis each) {
    return Math.min(mm(from, each), mm(end(), each));
  }

  private double high(Axis each) {
    return Math.max(mm(from, each), mm(end(), each));
  }

  private Point3 end() {
    return from.moved(way, length);
  }

  private static double mm(Point3 point, Axis axis) {
    return point.along(axis).inMm();
  }
}
