package org.slatwright.design.checks;

import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.design.mechanics.PointMass;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/** Which way a rack tips, and which size of it holds against that. */
enum Way {
  /** Over the front feet, or the rear ones where it stands free: the nearer. */
  FORWARD("forwards or backwards", Axis.Y, "rack.rail-length"),
  /** Over the outer feet of an end frame. */
  SIDEWAYS("sideways", Axis.X, "rack.interior-width");

  /** A rack that would have to be longer still is another rack: our choice. */
  private static final int LONGEST = 2;

  private static final double M3_PER_MM3 = 1e-9;

  private final String words;
  private final Axis axis;
  private final String key;

  Way(String words, Axis axis, String key) {
    this.words = words;
    this.axis = axis;
    this.key = key;
  }

  String words() {
    return words;
  }

  /** How far a body stands behind the edge that it tips over, in mm; zero where it is beyond. */
  double lever(Stance stance, PointMass body) {
    double at = this == FORWARD ? body.y() : body.x();
    double low = stance.feet().low().along(axis).inMm();
    double high = stance.feet().high().along(axis).inMm();
    return Math.max(0, Math.min(at - low, high - at));
  }

  /** How far the rack reaches out beyond its feet; zero where it does not. */
  Length reach(Stance stance, Design design) {
    Length low = design.assembly().extent().low().along(axis);
    Length high = design.assembly().extent().high().along(axis);
    return Length.max(
        stance.feet().low().along(axis).minus(low), high.minus(stance.feet().high().along(axis)));
  }

  /** What each mm that the rack is longer this way adds to it, in kg: rails or slats. */
  double kgPerMm(Rack rack) {
    return this == FORWARD
        ? rack.frames()
            * rack.shelves()
            * section(rack.rail().width(), rack.rail().height())
            * rack.timber().species().density(rack.climate().usual())
        : rack.rows().stream()
                .filter(row -> row.run() == 0)
                .flatMap(row -> row.slats().stream())
                .mapToDouble(slat -> section(slat.width(), slat.thickness()))
                .sum()
            * rack.slatTimber().species().density(rack.climate().usual());
  }

  /**
   * The least size, where it stands by being longer than it is: {@code rack.rail-length=640}; empty
   * where that is too long.
   *
   * @param mm how much longer its feet must stand apart
   */
  Optional<String> atLeast(Rack rack, double mm) {
    Length size = this == FORWARD ? rack.rail().length() : rack.interiorWidth();
    int sharing = this == FORWARD ? 1 : rack.bays();
    Length least = size.plus(Length.roundedMm(mm / sharing)).snappedUp(rack.increment());
    return least.isMoreThan(size.times(LONGEST))
        ? Optional.empty()
        : Optional.of(key + "=" + new Spelling(rack.units()).length(least));
  }

  private static double section(Length a, Length b) {
    return a.inMm() * b.inMm() * M3_PER_MM3;
  }
}
