package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/**
 * Where the bit may end up, drilled through the jig: as far off the middle as the saddle has play
 * on the upright, and leaning as far as a guide of that length lets it.
 *
 * <p>A bit with {@code c} of play in a guide of length {@code g} leans by at most {@code c / g}; at
 * a depth {@code t} past the guide its axis is off by at most {@code c / 2 + c t / g} (two circles
 * in a cylinder, by geometry).
 */
final class JigAccuracy implements Rule {

  /**
   * Play of a bit in a guide hole that it bored itself, or in a bush. Common practice, no source.
   */
  private static final double BIT_PLAY_MM = 0.1;

  /** A shorter guide lets the bit follow the grain. Common practice, no source. */
  private static final int LEAST_HALF_DIAMETERS = 5;

  private static final String SOURCE =
      "geometry; 0.1 mm play in the guide: common practice, no source";

  @Override
  public Stream<Finding> check(Design design) {
    return design.jig().stream().flatMap(jig -> findings(design.rack(), jig));
  }

  private static Stream<Finding> findings(Rack rack, Jig jig) {
    Figures figures = new Figures(rack.lengths());
    return Stream.of(guideLength(jig, figures), wood(rack, jig, figures));
  }

  private static Finding guideLength(Jig jig, Figures figures) {
    Length least = jig.guideDiameter().times(LEAST_HALF_DIAMETERS).half();
    boolean enough = !jig.guideDepth().isLessThan(least);
    return new Finding(
        enough ? Severity.NOTE : Severity.WARNING,
        "jig-check",
        "guide of the jig",
        "how far the guide holds the bit; 2 1/2 diameters keep it from following the grain",
        figures.length(jig.guideDepth()),
        "at least " + figures.length(least),
        enough ? "" : "stack more guide plates",
        "common practice, no source");
  }

  private static Finding wood(Rack rack, Jig jig, Figures figures) {
    double off = offMm(rack, jig);
    double left = leastWood(rack).inMm() - off;
    boolean holds = left > 0;
    return new Finding(
        holds ? Severity.NOTE : Severity.ERROR,
        "jig-check",
        "play of the jig",
        "the jig lets a hole end up to "
            + figures.distance(off)
            + " off; "
            + (holds ? "so much wood stays beside it" : "it breaks out of the side"),
        figures.distance(Math.max(left, 0)),
        "more than 0",
        holds ? "" : "thinner dowels or wider stock",
        SOURCE);
  }

  /** At the bottom of the hole. */
  static double offMm(Rack rack, Jig jig) {
    double past = rack.upright().depth().plus(rack.joint().holeDepth()).inMm();
    double lean = BIT_PLAY_MM / 2 + BIT_PLAY_MM * past / jig.guideDepth().inMm();
    return jig.clearance().inMm() + lean;
  }

  /** Between a hole where it should be and the nearest side of rail or upright. */
  private static Length leastWood(Rack rack) {
    Length radius = rack.joint().diameter().half();
    Length aside = Length.min(rack.rail().width(), rack.upright().width()).half();
    Length below = rack.joint().heights().get(0);
    Length above =
        rack.rail().height().minus(rack.joint().heights().get(rack.joint().heights().size() - 1));
    return Length.min(aside, Length.min(below, above)).minus(radius);
  }
}
