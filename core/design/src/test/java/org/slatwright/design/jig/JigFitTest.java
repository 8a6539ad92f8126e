package org.slatwright.design.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.statistics.Statistics;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.outline.Polygons;

/** What every jig that is made promises, whatever the stock. Checked with JTS in mm. */
@Domain(Benches.class)
class JigFitTest {

  private static final double FAR_MM = 400;
  private static final double ROUNDING_MM = 0.002;

  private static final List<Bench> EXAMPLES =
      List.of(
          Bench.square(38.1, 9.525, 6),
          Bench.square(44, 10, 6),
          Bench.measured(37.6, 37.9, 10, 5.8),
          Bench.square(44, 10, 6).withRail(44, 70, 2),
          Bench.square(44, 10, 6).withRail(32, 70, 1),
          Bench.square(44, 12, 3),
          Bench.square(70, 8, 18),
          Bench.square(38.1, 9.525, 6.35).in(Unit.INCH),
          Bench.square(38.1, 9.525, 5.953125).in(Unit.INCH));

  @Example
  void theStockOfTheExamplesAllowsAJig() {
    EXAMPLES.forEach(bench -> assertEquals(List.of(), JigMaker.make(bench.rack()).findings()));
  }

  @Example
  void everyExampleKeepsEveryPromise() {
    EXAMPLES.forEach(this::keepsEveryPromise);
  }

  @Property(tries = 60)
  void anyStockGetsAJigThatKeepsEveryPromiseOrAReasonWhyNot(@ForAll Bench bench) {
    MadeJig made = JigMaker.make(bench.rack());
    Statistics.label("jig made")
        .collect(made.jig().isPresent())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 40));
    assertEquals(made.jig().isEmpty(), !made.findings().isEmpty());
    if (made.jig().isPresent()) {
      keepsEveryPromise(bench);
    }
  }

  private void keepsEveryPromise(Bench bench) {
    Jig jig = jig(bench);
    jig.plates().forEach(plate -> isOneSoundPiece(plate, bench.webMm()));
    countsEveryPlate(jig);
    guidesDeepEnough(bench, jig);
    noTwoPlatesShareSpace(jig);
    everyTabFillsItsSlotButForThePlay(bench, jig);
    bearsOnFaceAndRailEdgeExactly(bench, jig);
    staysClearOfTheStock(bench, jig);
    guidesAlongTheDowels(bench, jig);
  }

  private static void isOneSoundPiece(Plate plate, double webMm) {
    assertEquals(Point2.ORIGIN, Extent.of(plate.boundary()).low(), plate.mark());
    Polygon sheet = Polygons.of(plate.boundary());
    assertTrue(sheet.isValid(), plate.mark());
    List<Outline> openings = openings(plate);
    for (int i = 0; i < openings.size(); i++) {
      Geometry grown = Polygons.of(openings.get(i)).buffer(webMm - ROUNDING_MM);
      assertTrue(sheet.contains(grown), plate.mark() + ": too near the edge");
      for (int j = 0; j < i; j++) {
        assertFalse(grown.intersects(Polygons.of(openings.get(j))), plate.mark() + ": too near");
      }
    }
    Geometry withoutNecks = Polygons.of(plate.boundary(), openings).buffer(-0.49 * webMm);
    assertEquals(1, withoutNecks.getNumGeometries(), plate.mark() + ": has a neck below the web");
  }

  private static List<Outline> openings(Plate plate) {
    List<Outline> openings = new ArrayList<>(plate.openings());
    openings.addAll(plate.bores());
    return openings;
  }

  private static void countsEveryPlate(Jig jig) {
    for (Plate plate : jig.plates()) {
      long placed = jig.placed().stream().filter(one -> one.plate().equals(plate)).count();
      assertEquals(plate.quantity(), placed, plate.mark());
    }
  }

  /**
   * At least 2 1/2 diameters, and no sheet more than that takes, or than the two that a bush does:
   * one for its seat and one to sit on. Common practice, no source.
   */
  private static void guidesDeepEnough(Bench bench, Jig jig) {
    double least = 2.5 * bench.dowel().inMm();
    double depth = jig.guideDepth().inMm();
    double most = least + bench.sheet().inMm();
    double forBush = bench.bush().isPresent() ? 2 * bench.sheet().inMm() + 1e-5 : 0;
    assertTrue(depth > least - 1e-5 && depth < Math.max(most, forBush), jig.guideDepth() + "");
    assertTrue(bench.bush().isEmpty() || depth > forBush - 2e-5, jig.guideDepth() + "");
    assertTrue(jig.plates().get(0).quantity() <= 12);
    assertEquals(bench.dowel(), jig.guideDiameter());
  }

  private static void noTwoPlatesShareSpace(Jig jig) {
    List<Solid> solids = Solid.of(jig);
    for (int i = 0; i < solids.size(); i++) {
      for (int j = 0; j < i; j++) {
        shareNoSpace(solids.get(i), solids.get(j));
      }
    }
  }

  private static void shareNoSpace(Solid one, Solid other) {
    assertFalse(one.overlaps(other), one.name() + " runs into " + other.name());
  }

  /** A slot along z is filled across x by the sheet of a cheek; the register has room below it. */
  private static void everyTabFillsItsSlotButForThePlay(Bench bench, Jig jig) {
    Plate guide = jig.plates().get(0);
    List<Solid> solids = Solid.of(jig);
    Solid stacked = solids.get(0);
    for (Solid cheek : cheeks(solids)) {
      List<double[]> tabs = cheek.alongWithin(Axis.Z, stacked.low(), stacked.high());
      List<Extent> slots = slotsAround(guide, jig.placed().get(0), cheek);
      assertEquals(2, tabs.size());
      assertEquals(2, slots.size());
      for (int i = 0; i < tabs.size(); i++) {
        double bottom = jig.placed().get(0).placement().corner().z().inMm();
        assertEquals(0, tabs.get(i)[0] - bottom - slots.get(i).low().y().inMm(), 1e-4);
        assertEquals(
            bench.mmOr(0.1, 1.0 / 64),
            slots.get(i).high().y().inMm() + bottom - tabs.get(i)[1],
            1e-4);
      }
      assertEquals(
          slots.get(0).height().minus(slots.get(1).height()).inMm(),
          bench.mmOr(4, 3.0 / 16),
          1e-4,
          "the lower slot is longer, so no plate goes on upside down");
    }
    registerHasPlay(jig, bench.mmOr(0.1, 1.0 / 64));
  }

  private static List<Extent> slotsAround(Plate guide, Jig.Placed placed, Solid cheek) {
    double left = placed.placement().corner().x().inMm();
    return guide.openings().stream()
        .map(Extent::of)
        .filter(
            slot ->
                Math.abs(slot.low().x().inMm() + left - cheek.low()) < 1e-4
                    && Math.abs(slot.high().x().inMm() + left - cheek.high()) < 1e-4)
        .toList();
  }

  private static void registerHasPlay(Jig jig, double playMm) {
    Jig.Placed cheek = jig.placed().get(jig.placed().size() - 2);
    Extent slot = Extent.of(cheek.plate().openings().get(0));
    Point3 low = cheek.placement().toRack(new Point3(slot.low().x(), slot.low().y(), Length.ZERO));
    Solid register = last(Solid.of(jig));
    double[] inCheek = register.alongWithin(Axis.Y, cheekX(jig), cheekX(jig) + 1).get(0);
    assertEquals(0, inCheek[0] - low.y().inMm(), 1e-4);
    assertEquals(playMm, low.y().plus(slot.width()).inMm() - inCheek[1], 1e-4);
    assertEquals(playMm, register.low() - low.z().inMm(), 1e-4);
    assertEquals(register.high(), low.z().plus(slot.height()).inMm(), 1e-4, "bears on it");
  }

  private static double cheekX(Jig jig) {
    return cheeks(Solid.of(jig)).get(1).low();
  }

  private static void bearsOnFaceAndRailEdgeExactly(Bench bench, Jig jig) {
    Box first = jig.placed().get(0).box();
    assertEquals(Length.ZERO, first.high().y(), "the stack lies on the outer face");
    Box register = jig.placed().get(jig.placed().size() - 1).box();
    assertEquals(Length.ZERO, register.low().z(), "the register lies on the rail edge");
    assertTrue(register.low().y().isMoreThan(Length.ZERO));
    assertTrue(register.high().x().isMoreThan(bench.railWidth().half()));
    assertTrue(register.low().x().isLessThan(bench.railWidth().half().negated()));
    for (Jig.Placed cheek : cheeksOf(jig)) {
      Box box = cheek.box();
      Length inner = Length.min(box.low().x().abs(), box.high().x().abs());
      Length gap = inner.minus(bench.uprightWidth().half());
      assertTrue(gap.minus(jig.clearance()).abs().nanometres() <= 1, "cheek off by " + gap);
    }
    assertEquals(bench.mmOr(0.2, 1.0 / 128), jig.clearance().inMm(), 1e-6);
  }

  private static void staysClearOfTheStock(Bench bench, Jig jig) {
    for (Solid plate : Solid.of(jig)) {
      shareNoSpace(plate, upright(bench));
      shareNoSpace(plate, rail(bench));
    }
  }

  private static Solid upright(Bench bench) {
    double half = bench.uprightWidth().inMm() / 2;
    double depth = bench.uprightDepth().inMm();
    return Solid.box("the upright", -half, half, 0, depth, -FAR_MM, FAR_MM);
  }

  private static Solid rail(Bench bench) {
    double half = bench.railWidth().inMm() / 2;
    double face = bench.uprightDepth().inMm();
    return Solid.box("the rail", -half, half, face, FAR_MM, -bench.railHeight().inMm(), 0);
  }

  /** Sets the jig on every joint of the framed rack, first on the upper rail edge, then turned. */
  private static void guidesAlongTheDowels(Bench bench, Jig jig) {
    Assembly assembly = Framing.frame(bench.rack());
    for (Joint joint : assembly.joints()) {
      Box upright = joint.upright().box();
      Box rail = joint.rail().box();
      List<Length> upper =
          boresBelowEdge(jig).stream().map(rail.high().z()::minus).sorted().toList();
      List<Length> lower = boresBelowEdge(jig).stream().map(rail.low().z()::plus).sorted().toList();
      for (int i = 0; i < joint.pins().size(); i++) {
        Bore bore = joint.upright().bore(joint.pins().get(i).uprightHole());
        Length middle = upright.low().x().plus(upright.size(Axis.X).half());
        assertTrue(bore.mouth().x().minus(middle).abs().nanometres() <= 1);
        assertTrue(bore.mouth().z().minus(upper.get(i)).abs().nanometres() <= 1);
        assertTrue(bore.mouth().z().minus(lower.get(i)).abs().nanometres() <= 1);
      }
    }
  }

  /** From the guide plates as they are placed; each of the stack alike, in the middle of x. */
  private static List<Length> boresBelowEdge(Jig jig) {
    List<List<Point3>> centres =
        jig.placed().stream()
            .filter(placed -> !placed.plate().bores().isEmpty())
            .map(JigFitTest::centres)
            .distinct()
            .toList();
    assertEquals(1, centres.size(), "the guide holes line up");
    centres.get(0).forEach(centre -> assertTrue(centre.x().abs().nanometres() <= 1));
    List<Length> below = centres.get(0).stream().map(Point3::z).map(Length::negated).toList();
    assertEquals(below, jig.railEdgeToHoles());
    return below;
  }

  private static List<Point3> centres(Jig.Placed placed) {
    return placed.plate().bores().stream()
        .map(Outline.Circle::centre)
        .map(centre -> placed.placement().toRack(new Point3(centre.x(), centre.y(), Length.ZERO)))
        .map(centre -> new Point3(centre.x(), Length.ZERO, centre.z()))
        .toList();
  }

  @Property(tries = 15)
  void theJigGoesTogetherAndOntoAnyRailOfAGluedFrame(@ForAll Bench bench) {
    Assume.that(JigMaker.make(bench.rack()).jig().isPresent());
    Jig jig = jig(bench);
    guidePlatesSlideOntoTheCheeks(jig);
    saddleSlidesOverTheUpright(bench, jig);
    registerSlidesInFromTheSide(bench, jig);
  }

  private static void guidePlatesSlideOntoTheCheeks(Jig jig) {
    List<Solid> solids = Solid.of(jig);
    List<Solid> cheeks = cheeks(solids);
    for (Solid guide : stack(solids)) {
      slides(guide, Axis.Y, -jig.guideDepth().inMm() - 10, cheeks);
    }
  }

  private static void saddleSlidesOverTheUpright(Bench bench, Jig jig) {
    List<Solid> solids = Solid.of(jig);
    for (Solid plate : solids.subList(0, solids.size() - 1)) {
      slides(plate, Axis.Y, -150, List.of(upright(bench), rail(bench)));
    }
  }

  private static void registerSlidesInFromTheSide(Bench bench, Jig jig) {
    List<Solid> solids = Solid.of(jig);
    List<Solid> others =
        Stream.concat(
                solids.subList(0, solids.size() - 1).stream(),
                Stream.of(upright(bench), rail(bench)))
            .toList();
    slides(last(solids), Axis.X, -150, others);
  }

  private static void slides(Solid plate, Axis axis, double from, List<Solid> past) {
    for (double at = from; at < 0; at += 2.9) {
      Solid moved = plate.moved(axis, at);
      past.forEach(other -> shareNoSpace(moved, other));
    }
  }

  @Example
  void aRegisterFixedInTheSaddleWouldNotPassTheUpright() {
    Bench bench = Bench.square(44, 10, 6);
    Solid register = last(Solid.of(jig(bench)));
    assertTrue(register.moved(Axis.Y, -30).overlaps(upright(bench)));
  }

  private static Jig jig(Bench bench) {
    return JigMaker.make(bench.rack()).jig().orElseThrow();
  }

  private static List<Jig.Placed> cheeksOf(Jig jig) {
    return jig.placed().stream()
        .filter(placed -> placed.placement().thickness() == Direction.PLUS_X)
        .toList();
  }

  private static List<Solid> cheeks(List<Solid> solids) {
    return solids.stream().filter(solid -> solid.normal() == Axis.X).toList();
  }

  private static List<Solid> stack(List<Solid> solids) {
    return solids.stream().filter(solid -> solid.normal() == Axis.Y).toList();
  }

  private static Solid last(List<Solid> solids) {
    return solids.get(solids.size() - 1);
  }
}
