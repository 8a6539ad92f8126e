package org.slatwright.design.checks;

import java.util.stream.IntStream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.design.mechanics.Beam;
import org.slatwright.design.mechanics.Creep;
import org.slatwright.design.mechanics.Loading;
import org.slatwright.design.mechanics.Overhang;
import org.slatwright.design.mechanics.RectangularSection;
import org.slatwright.design.mechanics.Tipping;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/**
 * One slat as a beam, flat, across one bay from the middle of a frame to the middle of the next.
 *
 * <p>Each bay is reckoned alone, its slats resting on two rails. That is on the safe side: nails
 * hold a slat's ends back a little, and a slat that runs on over more bays neither bends nor sags
 * more than one that ends at the frames. Shear is left out of the strength: a beam as thin for its
 * span as a slat breaks in bending first.
 *
 * @param rack the slat's
 * @param thickness of the thinnest slat, maybe another than the rack's, as the other sizes here
 * @param interior between two frames
 * @param overhang of the slat's ends
 * @param load on each shelf, over all bays
 */
record SlatCase(
    Rack rack, Length thickness, int bays, Length interior, Length overhang, Mass load) {

  private static final double KG_PER_MM3 = 1e-9;

  /** Our own choice: a tub or a sack is short for its bay, but seldom stands on one slat alone. */
  private static final int SLATS_UNDER_A_THING = 2;

  static SlatCase of(Rack rack) {
    Rack.SlatRow slats = rack.slats();
    return new SlatCase(
        rack, slats.thinnest(), rack.bays(), rack.interiorWidth(), slats.overhang(), rack.load());
  }

  SlatCase withThickness(Length other) {
    return new SlatCase(rack, other, bays, interior, overhang, load);
  }

  SlatCase withInterior(Length other) {
    return new SlatCase(rack, thickness, bays, other, overhang, load);
  }

  SlatCase withBays(int others, Length interiorOfEach) {
    return new SlatCase(rack, thickness, others, interiorOfEach, overhang, load);
  }

  SlatCase withOverhang(Length other) {
    return new SlatCase(rack, thickness, bays, interior, other, load);
  }

  SlatCase withLoad(Mass other) {
    return new SlatCase(rack, thickness, bays, interior, overhang, other);
  }

  /** Between the middles of two frames, mm. */
  double span() {
    return interior.plus(rack.upright().width()).inMm();
  }

  /** Of the tip beyond the outer face of the outer rail, mm. */
  double reach() {
    return overhang.plus(rack.upright().width().minus(rack.rail().width()).half()).inMm();
  }

  /**
   * On the narrowest slat in one bay, as if it bore as much for its width as the slat that bears
   * most for its own; N.
   */
  double evenLoad() {
    double perMm =
        rack.rows().stream()
            .flatMap(
                row ->
                    IntStream.range(0, row.slats().size())
                        .mapToObj(i -> share(row, i) / row.slats().get(i).width().inMm()))
            .reduce(0.0, Math::max);
    return bayLoad() * perMm * narrowest().inMm() + ownWeight(narrowest());
  }

  /** On a slat of a row: its share of the shelf's load by the width it serves, and its own; N. */
  double evenLoad(ShelfRow row, int slat) {
    return bayLoad() * share(row, slat) + ownWeight(row.slats().get(slat).width());
  }

  /** Of a slat and the gap beside it among all of its row. */
  private static double share(ShelfRow row, int slat) {
    double all =
        row.slats().stream().mapToDouble(each -> each.width().plus(row.gap()).inMm()).sum();
    return row.slats().get(slat).width().plus(row.gap()).inMm() / all;
  }

  /** On one slat: a thing as heavy as all that stands in a bay, on two slats; N. */
  double oneThing() {
    int fewest = rack.rows().stream().mapToInt(row -> row.slats().size()).min().orElseThrow();
    return bayLoad() / Math.min(SLATS_UNDER_A_THING, fewest);
  }

  /** Bending stress with the load spread evenly. */
  Reckoned strength() {
    double stress = beam().stress(Loading.UNIFORM, evenLoad());
    return Strength.bending(stress, rack.slatTimber(), rack.climate());
  }

  /** Bending stress with one thing in the middle of the span. */
  Reckoned strengthUnderOneThing() {
    double stress =
        beam().stress(Loading.CENTRE, oneThing())
            + beam().stress(Loading.UNIFORM, ownWeight(narrowest()));
    return Strength.bendingUnstated(stress, rack.slatTimber(), rack.climate());
  }

  /** Bending stress over the outer rail with one thing on the end, its weight in the middle. */
  Reckoned strengthOfTheEnd() {
    double stress = new Overhang(beam(), reach()).stress(oneThing());
    return Strength.bendingUnstated(stress, rack.slatTimber(), rack.climate());
  }

  /** With the load spread evenly, after years; mm. */
  double sag() {
    return beam().deflection(Loading.UNIFORM, evenLoad()) * creep();
  }

  /** Of the tip, with one thing on the end and nothing in the bay, after years; mm. */
  double tipSag() {
    return new Overhang(beam(), reach()).tipSag(oneThing()) * creep();
  }

  /** What a bay of a shelf carries. */
  Mass bayMass() {
    return Mass.roundedKg(load.kg() / bays);
  }

  private double bayLoad() {
    return load.kg() * Tipping.GRAVITY / bays;
  }

  private double ownWeight(Length width) {
    double density = rack.slatTimber().species().density(rack.climate().dampest());
    double volume = width.inMm() * thickness.inMm() * span();
    return density * KG_PER_MM3 * volume * Tipping.GRAVITY;
  }

  private Beam beam() {
    RectangularSection section = new RectangularSection(narrowest().inMm(), thickness.inMm());
    return new Beam(section, span(), rack.slatTimber().stiffness());
  }

  private Length narrowest() {
    return rack.rows().stream()
        .flatMap(row -> row.slats().stream())
        .map(ShelfRow.Slat::width)
        .reduce(Length::min)
        .orElseThrow();
  }

  private double creep() {
    return Creep.factor(rack.climate().creep());
  }
}
