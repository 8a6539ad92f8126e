package org.slatwright.design.checks;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.design.mechanics.Beam;
import org.slatwright.design.mechanics.Creep;
import org.slatwright.design.mechanics.PointLoad;
import org.slatwright.design.mechanics.PointLoaded;
import org.slatwright.design.mechanics.RectangularSection;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/**
 * The rail that bears most, as a beam between the uprights of its frame, with a load under the
 * middle of each slat.
 *
 * <p>Its joints are reckoned as if they turned freely, which is on the safe side. Its own weight is
 * left out: a hundredth of what it bears.
 *
 * @param rack the rail's
 * @param height of the rail, maybe another than the rack's, as the load
 * @param load on each shelf, over all bays
 */
record RailCase(Rack rack, Length height, Mass load) {

  /**
   * Against the load of one bay, on the inner frame of a slat that runs over two: textbook, beam
   * over two equal spans, evenly loaded, 10/8. Over more spans it is less, however they are loaded.
   */
  private static final double RUNNING_ON = 1.25;

  static RailCase of(Rack rack) {
    return new RailCase(rack, rack.rail().height(), rack.load());
  }

  RailCase withHeight(Length other) {
    return new RailCase(rack, other, load);
  }

  RailCase withLoad(Mass other) {
    return new RailCase(rack, height, other);
  }

  /** Between the uprights, mm. */
  double span() {
    return rack.rail().length().inMm();
  }

  /** Bending stress with the load spread evenly. */
  Reckoned bending() {
    return Strength.bending(worst(PointLoaded::stress), rack.timber(), rack.climate());
  }

  /** Shear stress at the ends with the load spread evenly, dowel holes left out. */
  Reckoned shear() {
    return Strength.shear(worst(PointLoaded::shearStress), rack.timber(), rack.climate());
  }

  /** With the load spread evenly, after years; mm. */
  double sag() {
    return worst(PointLoaded::sagInTheMiddle) * Creep.factor(rack.climate().creep());
  }

  /** At the end that bears more, N. */
  double endForce() {
    return rack.rows().stream().map(this::loads).mapToDouble(this::endForce).max().orElseThrow();
  }

  private double endForce(List<PointLoad> loads) {
    double front =
        loads.stream().mapToDouble(load -> (1 - load.at() / span()) * load.force()).sum();
    return Math.max(front, loads.stream().mapToDouble(PointLoad::force).sum() - front);
  }

  /**
   * The moment about the length of the rail at the end that bears more, N·mm. Slats that bend press
   * hardest on the edge of the rail towards their bay: the pressure falls to nothing over the width
   * that they lie on, a triangle, which is our own choice. That is the whole rail at the ends of
   * the rack, and half of it where slats of two bays meet, of which but one is loaded.
   */
  double endTwist() {
    double width = rack.rail().width().inMm();
    boolean meet = rack.slats().lengths().size() > 1;
    double most = Math.max(outer(), meet ? 1 : 0) * width / 6;
    return endForce() / Math.max(outer(), inner()) * most;
  }

  private double worst(ToDoubleFunction<PointLoaded> effect) {
    RectangularSection section = new RectangularSection(rack.rail().width().inMm(), height.inMm());
    Beam beam = new Beam(section, span(), rack.timber().stiffness());
    return rack.rows().stream()
        .mapToDouble(row -> effect.applyAsDouble(new PointLoaded(beam, loads(row))))
        .max()
        .orElseThrow();
  }

  /** Under the middle of each slat of a row. */
  private List<PointLoad> loads(ShelfRow row) {
    double times = Math.max(outer(), inner());
    SlatCase slat = slat();
    List<Length> fronts = row.fronts();
    return IntStream.range(0, fronts.size())
        .mapToObj(
            i ->
                new PointLoad(
                    fronts.get(i).plus(row.slats().get(i).width().half()).inMm(),
                    slat.evenLoad(row, i) * times))
        .toList();
  }

  /**
   * From each slat on a rail at the end of the rack, its overhang loaded like the bay; times what
   * it bears in one bay.
   */
  private double outer() {
    SlatCase slat = slat();
    double reach = slat.reach();
    return 0.5 + reach / slat.span() + square(reach / slat.span()) / 2;
  }

  /** The same on a rail between two bays. */
  private double inner() {
    if (rack.bays() == 1) {
      return 0;
    }
    boolean runsThrough = rack.slats().lengths().size() == 1;
    return runsThrough ? RUNNING_ON : 1;
  }

  private SlatCase slat() {
    return SlatCase.of(rack).withLoad(load);
  }

  private static double square(double number) {
    return number * number;
  }
}
