package org.slatwright.design.checks;

import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Fastener;
import org.slatwright.design.mechanics.Fastening;
import org.slatwright.design.mechanics.Nail;
import org.slatwright.design.mechanics.Screw;
import org.slatwright.design.sizing.Rack;

/** A brad or screw of a rack, driven through a slat into a rail. */
record FixingCase(Rack rack) {

  static final String SOURCE = "Wood Handbook, FPL-GTR-282, chapter 8";

  /** Common practice, no source: two thirds of a wood screw are threaded. */
  private static final double THREADED = 2.0 / 3;

  /** As many at a bearing as a rack file may ask for. */
  static final int MOST_PER_END = 6;

  /**
   * How much more is borne for a moment than for years: the load duration factor for ten minutes of
   * the NDS for wood construction, table 2.3.2, which applies to withdrawal too (from memory).
   */
  private static final double SHORT = 1.6;

  Fastening fastening() {
    double diameter = rack.fixing().diameter().inMm();
    return rack.fixing().kind() == Fastener.Kind.SCREW ? new Screw(diameter) : new Nail(diameter);
  }

  /** How deep it is in the rail. */
  Length depth() {
    return rack.fixing().length().minus(rack.slats().thickness());
  }

  /** The depth at which it holds fully against a push across it, mm. */
  double leastDepth() {
    return fastening().leastDepth(gravity());
  }

  boolean isDeepEnough() {
    return depth().inMm() >= leastDepth() - Rod.ROUNDING;
  }

  /** The pull that draws it out, average of tests, N. */
  double withdrawal() {
    double depth = depth().inMm();
    double thread = rack.fixing().length().inMm() * THREADED;
    boolean screw = rack.fixing().kind() == Fastener.Kind.SCREW;
    return fastening().withdrawal(gravity(), screw ? Math.min(depth, thread) : depth);
  }

  /**
   * A pull on one that lasts, N: at most a sixth of what draws it out, and failing at all of it.
   */
  Reckoned pull(double newtons) {
    return new Reckoned(newtons, withdrawal() / Fastening.SAFETY, withdrawal());
  }

  /** The same for a moment. */
  Reckoned shortPull(double newtons) {
    return new Reckoned(newtons, safeShortPull(), withdrawal());
  }

  /** The pull on one for a moment that is used, N. */
  double safeShortPull() {
    return withdrawal() / Fastening.SAFETY * SHORT;
  }

  /** Brads or screws. */
  String plural() {
    return Inside.plural(rack.fixing().kind());
  }

  private double gravity() {
    return rack.timber().species().gravity();
  }
}
