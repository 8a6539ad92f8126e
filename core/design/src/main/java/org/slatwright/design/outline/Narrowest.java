package org.slatwright.design.outline;

import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.math.Vector2D;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;

/** How thick a round cutter may be that still gets to every straight edge of an outline. */
public final class Narrowest {

  /** Thicker cutters are of no interest. */
  private static final double THICKEST_MM = 100;

  /** An edge is tried at both ends, in the middle and in between. */
  private static final int STEPS = 8;

  private final List<Curve> edges;
  private final Side side;

  private Narrowest(Outline.Path outline, Side side) {
    this.edges = outline.edges().stream().map(Curve::of).toList();
    this.side = side;
  }

  /**
   * The width of the narrowest slot, waist or notch on that side: a cutter of that diameter jams, a
   * thinner one touches every straight edge somewhere. At most 100 mm.
   */
  public static Length of(Outline.Path outline, Side side) {
    Narrowest narrowest = new Narrowest(outline, side);
    return IntStream.range(0, narrowest.edges.size())
        .filter(edge -> narrowest.edges.get(edge) instanceof Curve.Straight)
        .mapToObj(narrowest::before)
        .min(Length::compareTo)
        .orElse(Length.roundedMm(THICKEST_MM));
  }

  /** The widest that touches an edge somewhere. */
  private Length before(int edge) {
    double radius =
        IntStream.rangeClosed(0, STEPS)
            .mapToDouble(step -> touching(edge, (double) step / STEPS))
            .max()
            .orElseThrow();
    return Length.roundedMm(Math.rint(radius * 2 * 1e5) / 1e5);
  }

  /** The radius of the largest circle that touches there; all smaller ones lie within it. */
  private double touching(int edge, double share) {
    Vector2D touch = edges.get(edge).at(share);
    Vector2D away = edges.get(edge).setsOut().rotateByQuarterCircle(side == Side.INSIDE ? 1 : -1);
    double free = 0;
    double jams = THICKEST_MM / 2;
    while (jams - free > Offset.ROUNDING_MM) {
      double middle = (free + jams) / 2;
      if (isFree(edge, touch.add(away.multiply(middle)), middle)) {
        free = middle;
      } else {
        jams = middle;
      }
    }
    return free;
  }

  private boolean isFree(int edge, Vector2D centre, double radius) {
    return IntStream.range(0, edges.size())
        .filter(other -> other != edge)
        .allMatch(other -> edges.get(other).distance(centre) >= radius - Offset.ROUNDING_MM);
  }
}
