package org.slatwright.design.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** The formulas against beams solved by the stiffness method, whose matrices a library solves. */
class BeamElementsTest {

  private static final double NEAR = 1e-6;

  @Provide
  Arbitrary<Beam> beams() {
    Arbitrary<Double> sizes = Arbitraries.doubles().between(10, 120);
    return Combinators.combine(
            sizes,
            sizes,
            Arbitraries.doubles().between(60, 2000),
            Arbitraries.doubles().between(5000, 15_000))
        .as(
            (breadth, depth, length, stiffness) ->
                new Beam(new RectangularSection(breadth, depth), length, stiffness));
  }

  @Property(tries = 100)
  void aLoadInTheMiddleBendsABeamAsElementsSay(
      @ForAll("beams") Beam beam, @ForAll @DoubleRange(min = 1, max = 5000) double load) {
    BeamElements solved =
        elements(beam, List.of(0.0, beam.length() / 2, beam.length()))
            .load(1, load)
            .held(List.of(0, 4));

    assertNear(solved.sag(1), beam.deflection(Loading.CENTRE, load));
    assertNear(solved.moment(1) / beam.section().modulus(), beam.stress(Loading.CENTRE, load));
  }

  @Property(tries = 100)
  void anEvenLoadBendsABeamAsElementsSay(
      @ForAll("beams") Beam beam, @ForAll @DoubleRange(min = 1, max = 5000) double load) {
    BeamElements solved =
        elements(beam, List.of(0.0, beam.length() / 2, beam.length()))
            .spread(0, 2, load / beam.length())
            .held(List.of(0, 4));

    assertNear(solved.sag(1), beam.deflection(Loading.UNIFORM, load));
    assertNear(solved.moment(1) / beam.section().modulus(), beam.stress(Loading.UNIFORM, load));
  }

  @Property(tries = 100)
  void anEvenLoadBendsACantileverAsElementsSay(
      @ForAll("beams") Beam beam, @ForAll @DoubleRange(min = 1, max = 5000) double load) {
    BeamElements solved =
        elements(beam, List.of(0.0, beam.length()))
            .spread(0, 1, load / beam.length())
            .held(List.of(0, 1));

    assertNear(solved.sag(1), beam.deflection(Loading.UNIFORM_CANTILEVER, load));
    assertNear(
        -solved.moment(0) / beam.section().modulus(),
        beam.stress(Loading.UNIFORM_CANTILEVER, load));
  }

  @Property(tries = 200)
  void loadsAnywhereBendABeamAsElementsSay(
      @ForAll("beams") Beam beam,
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 0.01, max = 0.99) Double> places,
      @ForAll @Size(8) List<@DoubleRange(min = 1, max = 2000) Double> forces) {
    List<PointLoad> loads =
        IntStream.range(0, places.size())
            .mapToObj(i -> new PointLoad(places.get(i) * beam.length(), forces.get(i)))
            .toList();
    PointLoaded loaded = new PointLoaded(beam, loads);

    TreeSet<Double> sorted = new TreeSet<>(List.of(0.0, beam.length() / 2, beam.length()));
    loads.forEach(load -> sorted.add(load.at()));
    List<Double> nodes = new ArrayList<>(sorted);
    BeamElements elements = elements(beam, nodes);
    loads.forEach(load -> elements.load(nodes.indexOf(load.at()), load.force()));
    int last = nodes.size() - 1;
    BeamElements solved = elements.held(List.of(0, 2 * last));

    assertNear(solved.sag(nodes.indexOf(beam.length() / 2)), loaded.sagInTheMiddle());
    double moment = IntStream.rangeClosed(0, last).mapToDouble(solved::moment).max().orElseThrow();
    assertNear(moment / beam.section().modulus(), loaded.stress());
    double area = beam.section().breadth() * beam.section().depth();
    assertNear(
        1.5 * Math.max(solved.reaction(0), solved.reaction(last)) / area, loaded.shearStress());
  }

  @Property(tries = 100)
  void theTipOfAnOverhangSagsAsElementsSay(
      @ForAll("beams") Beam beam,
      @ForAll @DoubleRange(min = 0.01, max = 1) double share,
      @ForAll @DoubleRange(min = 1, max = 5000) double load) {
    double reach = beam.length() * share;
    Overhang overhang = new Overhang(beam, reach);
    BeamElements solved =
        elements(beam, List.of(0.0, beam.length(), beam.length() + reach))
            .spread(1, 2, load / reach)
            .held(List.of(0, 2));

    assertNear(solved.sag(2), overhang.tipSag(load));
    assertNear(-solved.moment(1) / beam.section().modulus(), overhang.stress(load));
  }

  /**
   * What the checks rest on: over several bays, however they are loaded, no slat bends, sags or
   * bears on an inner rail more than bay by bay, the rail's load raised by a quarter.
   */
  @Property(tries = 200)
  void reckoningEachBayAloneIsOnTheSafeSide(
      @ForAll("beams") Beam bay,
      @ForAll @Size(min = 2, max = 7) List<@DoubleRange(min = 0, max = 1) Double> shares) {
    double most = 500;
    int perBay = 8;
    int bays = shares.size();
    List<Double> nodes =
        IntStream.rangeClosed(0, bays * perBay).mapToObj(i -> i * bay.length() / perBay).toList();
    BeamElements elements = elements(bay, nodes);
    for (int i = 0; i < bays; i++) {
      elements.spread(i * perBay, (i + 1) * perBay, shares.get(i) * most / bay.length());
    }
    BeamElements solved =
        elements.held(IntStream.rangeClosed(0, bays).mapToObj(i -> 2 * i * perBay).toList());

    double sag = bay.deflection(Loading.UNIFORM, most) * (1 + NEAR);
    double moment = bay.stress(Loading.UNIFORM, most) * bay.section().modulus() * (1 + NEAR);
    for (int node = 0; node < nodes.size(); node++) {
      assertTrue(solved.sag(node) <= sag, "sag at node " + node);
      assertTrue(Math.abs(solved.moment(node)) <= moment, "moment at node " + node);
    }
    for (int frame = 1; frame < bays; frame++) {
      assertTrue(solved.reaction(frame * perBay) <= 1.25 * most * (1 + NEAR), "frame " + frame);
    }
  }

  private static BeamElements elements(Beam beam, List<Double> nodes) {
    double b = beam.section().breadth();
    double h = beam.section().depth();
    return new BeamElements(
        nodes, beam.stiffness() * b * h * h * h / 12, beam.stiffness() / 16 * b * h * 5 / 6);
  }

  private static void assertNear(double expected, double actual) {
    assertEquals(expected, actual, NEAR * Math.abs(expected));
  }
}
