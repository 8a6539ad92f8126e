package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.design.mechanics.Beam;
import org.slatwright.design.mechanics.Creep;
import org.slatwright.design.mechanics.PointLoad;
import org.slatwright.design.mechanics.PointLoaded;
import org.slatwright.design.mechanics.RectangularSection;
import org.slatwright.design.sizing.Rack;

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
    return Strength.bending(loaded().stress(), rack.timber(), rack.climate());
  }

  /** Shear stress at the ends with the load spread evenly, dowel holes left out. */
  Reckoned shear() {
    return Strength.shear(loaded().shearStress(), rack.timber(), rack.climate());
  }

  /** With the load spread evenly, after years; mm. */
  double sag() {
    return loaded().sagInTheMiddle() * Creep.factor(rack.climate().creep());
  }

  /** At the end that bears more, N. */
  double endForce() {
    double each = Math.max(outer(), inner());
    double front =
        IntStream.range(0, slats()).mapToDouble(slat -> 1 - middle(slat) / span()).sum() * each;
    return Math.max(front, slats() * each - front);
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
    double one = meet ? slat().evenLoad() / 2 * width / 3 : 0;
    double most = Math.max(outer() * width / 6, one);
    double each = Math.max(outer(), inner());
    return endForce() / each * most;
  }

  private int slats() {
    return rack.slats().count();
  }

  private PointLoaded loaded() {
    RectangularSection section = new RectangularSection(rack.rail().width().inMm(), height.inMm());
    Beam beam = new Beam(section, span(), rack.timber().stiffness());
    double each = Math.max(outer(), inner());
    List<PointLoad> loads =
        IntStream.range(0, rack.slats().count())
            .mapToObj(slat -> new PointLoad(middle(slat), each))
            .toList();
    return new PointLoaded(beam, loads);
  }

  /** From the front upright to the middle of a slat, mm. */
  private double middle(int slat) {
    Rack.SlatRow row = rack.slats();
    Length front = row.frontMargin().plus(row.width().plus(row.gap()).times(slat));
    return front.plus(row.width().half()).inMm();
  }

  /** From each slat on a rail at the end of the rack, its overhang loaded like the bay; N. */
  private double outer() {
    SlatCase slat = slat();
    double reach = slat.reach();
    return slat.evenLoad() * (0.5 + reach / slat.span() + square(reach / slat.span()) / 2);
  }

  /** From each slat on a rail between two bays; N. */
  private double inner() {
    if (rack.bays() == 1) {
      return 0;
    }
    boolean runsThrough = rack.slats().lengths().size() == 1;
    return slat().evenLoad() * (runsThrough ? RUNNING_ON : 1);
  }

  private SlatCase slat() {
    return SlatCase.of(rack).withLoad(load);
  }

  private static double square(double number) {
    return number * number;
  }
}
