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

  Fastening fastening() {
    return fastening(rack.fixing().kind(), rack.fixing().diameter());
  }

  /** How deep it is in the rail. */
  Length depth() {
    return rack.fixing().length().minus(rack.slats().thickness());
  }

  /** The depth at which it holds fully against a push across it, mm. */
  double leastDepth() {
    return fastening().leastDepth(gravity());
  }

  /** The pull that draws it out, average of tests, N. */
  double withdrawal() {
    return withdrawal(rack.fixing().kind(), rack.fixing().diameter());
  }

  /** The same of another one as long. */
  double withdrawal(Fastener.Kind kind, Length diameter) {
    double depth = depth().inMm();
    double thread = rack.fixing().length().inMm() * THREADED;
    double held = kind == Fastener.Kind.SCREW ? Math.min(depth, thread) : depth;
    return fastening(kind, diameter).withdrawal(gravity(), held);
  }

  /** A pull on one, N: at most a sixth of what draws it out, and failing at all of it. */
  Reckoned pull(double newtons) {
    return new Reckoned(newtons, withdrawal() / Fastening.SAFETY, withdrawal());
  }

  /** Brads or screws. */
  String plural() {
    return Inside.plural(rack.fixing().kind());
  }

  private double gravity() {
    return rack.timber().species().gravity();
  }

  private static Fastening fastening(Fastener.Kind kind, Length diameter) {
    return kind == Fastener.Kind.SCREW ? new Screw(diameter.inMm()) : new Nail(diameter.inMm());
  }
}
