package org.slatwright.design.machining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContextBase;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Pattern.Operation;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.jig.Bench;
import org.slatwright.design.jig.Benches;
import org.slatwright.design.jig.JigMaker;
import org.slatwright.design.outline.Polygons;
import org.slatwright.design.sizing.Rack.Cutter;
import org.slatwright.design.sizing.Rack.JigSheet;
import org.slatwright.design.sizing.Rack.Shop;

/** What whole sheets and the cutter's path through them promise; JTS is the judge. */
@Domain(Benches.class)
@Domain(SheetPatternsTest.Cutters.class)
class SheetPatternsTest {

  /** Of chords beside arcs, on both sides. */
  private static final double CHORDS_MM = 0.003;

  /** What cuts: a laser, or a router with round or relieved corners. */
  static class Cutters extends DomainContextBase {
    @Provide
    Arbitrary<Cutter> cutters() {
      Arbitrary<Cutter> lasers =
          Arbitraries.integers()
              .between(5, 40)
              .map(kerf -> new Cutter.Laser(Length.roundedMm(kerf / 100.0)));
      Arbitrary<Cutter> routers =
          Combinators.combine(Arbitraries.integers().between(8, 64), Arbitraries.of(true, false))
              .as((tool, relieved) -> new Cutter.Router(Length.roundedMm(tool / 8.0), relieved));
      return Arbitraries.oneOf(lasers, routers);
    }
  }

  @Property(tries = 25)
  void everyPlateLiesOnASheetAsOftenAsTheJigHasIt(@ForAll Bench bench, @ForAll Cutter cutter) {
    Jig jig = jig(bench);
    MadePatterns made = made(bench, Optional.of(cutter), jig);
    List<Double> areas = new ArrayList<>();
    for (Plate plate : jig.plates()) {
      areas.addAll(Collections.nCopies(plate.quantity(), Polygons.of(plate.boundary()).getArea()));
    }
    List<Double> drawn = new ArrayList<>();
    for (Pattern sheet : sheets(made, false)) {
      edges(sheet).forEach(edge -> drawn.add(edge.getArea()));
    }
    Collections.sort(areas);
    Collections.sort(drawn);
    assertEquals(areas.size(), drawn.size());
    for (int i = 0; i < areas.size(); i++) {
      assertEquals(areas.get(i), drawn.get(i), 1e-6);
    }
  }

  @Property(tries = 25)
  void noTwoPlatesAreCloserThanTheCutterAndAWeb(@ForAll Bench bench, @ForAll Cutter cutter) {
    double spacing =
        cutter.offset().inMm() * 2 + (bench.units() == Unit.MM ? 3 : 3.175) - CHORDS_MM;
    for (Pattern sheet : sheets(made(bench, Optional.of(cutter), jig(bench)), false)) {
      List<Polygon> edges = edges(sheet);
      for (int i = 0; i < edges.size(); i++) {
        Envelope box = new Envelope(edges.get(i).getEnvelopeInternal());
        box.expandBy(spacing);
        assertTrue(new Envelope(0, 600, 0, 400).contains(box), box.toString());
        for (int j = 0; j < i; j++) {
          assertTrue(edges.get(i).distance(edges.get(j)) >= spacing);
        }
      }
    }
  }

  /** What is left when the cutter has been along its path: no less than the plate anywhere. */
  @Property(tries = 25)
  void thePathLeavesEveryPlateWhole(@ForAll Bench bench, @ForAll Cutter cutter) {
    MadePatterns made = made(bench, Optional.of(cutter), jig(bench));
    boolean relieved = cutter instanceof Cutter.Router router && router.relieved();
    double radius = cutter.offset().inMm();
    List<Pattern> nominal = sheets(made, false);
    List<Pattern> paths = sheets(made, true);
    assertEquals(nominal.size(), paths.size());
    for (int i = 0; i < paths.size(); i++) {
      Geometry swept = swept(paths.get(i), radius);
      for (Pattern.Feature feature : nominal.get(i).features()) {
        if (feature.operation() == Operation.CUT_OUTSIDE) {
          double bitten = material(nominal.get(i), feature.outline()).intersection(swept).getArea();
          double allowed = relieved ? 40 * radius * radius : CHORDS_MM * 1000;
          assertTrue(bitten <= allowed, "cut into a plate: " + bitten + " mm2");
        }
      }
    }
  }

  @Property(tries = 25)
  void noPathCrossesItselfOrAnother(@ForAll Bench bench, @ForAll Cutter cutter) {
    for (Pattern path : sheets(made(bench, Optional.of(cutter), jig(bench)), true)) {
      List<Polygon> rings =
          path.features().stream()
              .filter(feature -> feature.operation() != Operation.REFERENCE)
              .map(feature -> Polygons.of(feature.outline()))
              .toList();
      for (int i = 0; i < rings.size(); i++) {
        assertTrue(rings.get(i).isValid(), rings.get(i).toString());
        for (int j = 0; j < i; j++) {
          assertTrue(
              !rings.get(i).getExteriorRing().intersects(rings.get(j).getExteriorRing()),
              rings.get(i) + " meets " + rings.get(j));
        }
      }
    }
  }

  @Property(tries = 25)
  void everyMarkLiesInItsPlateClearOfWhatIsCut(@ForAll Bench bench) {
    MadePatterns made = made(bench, Optional.empty(), jig(bench));
    for (Pattern pattern : made.patterns()) {
      for (Pattern.Stroke stroke : pattern.engraved()) {
        Geometry line =
            new GeometryFactory()
                .createLineString(
                    stroke.points().stream()
                        .map(point -> new Coordinate(point.x().inMm(), point.y().inMm()))
                        .toArray(Coordinate[]::new));
        boolean within = false;
        for (Pattern.Feature feature : pattern.features()) {
          Polygon area = Polygons.of(feature.outline());
          assertTrue(area.getExteriorRing().distance(line) > 1.9, pattern.name());
          within |= feature.operation() == Operation.CUT_OUTSIDE && area.covers(line);
        }
        assertTrue(within, pattern.name());
      }
    }
  }

  @Property(tries = 25)
  void aCutterAsThinAsAdvisedGetsEverywhere(@ForAll Bench bench, @ForAll Cutter cutter) {
    Jig jig = jig(bench);
    for (Finding jam : warnings(made(bench, Optional.of(cutter), jig), "jig-cutter")) {
      assertTrue(jam.advice().startsWith("set shop.cutter."), jam.advice());
      Cutter thinner = new Cutter.Router(set(jam, bench.units()), false);
      Plate plate =
          jig.plates().stream()
              .filter(p -> jam.subject().contains(p.mark()))
              .findFirst()
              .orElseThrow();
      List<Finding> left = warnings(made(bench, Optional.of(thinner), jig), "jig-cutter");
      assertTrue(left.stream().noneMatch(f -> f.subject().contains(plate.mark())), left.toString());
    }
  }

  @Example
  void aPlateLargerThanTheSheetIsToldWithTheSheetThatTakesIt() {
    Bench bench = Bench.square(44, 10, 6);
    Jig jig = jig(bench);
    MadePatterns small = made(bench, shop(bench, Optional.empty(), 90, 60), jig);
    assertEquals(List.of(), sheets(small, false));
    List<Finding> told = warnings(small, "jig-sheet");
    assertEquals(3, told.size());
    assertEquals("plate J1 guide plate", told.get(0).subject());
    assertEquals("at most 90 mm x 60 mm", told.get(0).limit());
    String[] sides = told.get(0).advice().substring("set shop.sheet-size=".length()).split("x");
    MadePatterns enough =
        made(
            bench,
            shop(
                bench,
                Optional.empty(),
                Double.parseDouble(sides[0]),
                Double.parseDouble(sides[1])),
            jig);
    assertEquals(List.of(), enough.findings());
    assertTrue(sheets(enough, false).size() > 1);
  }

  @Example
  void aBitAsThickAsASlotIsTold() {
    Bench bench = Bench.square(44, 10, 6);
    Finding jam =
        warnings(
                made(bench, Optional.of(new Cutter.Router(Length.mm(6), false)), jig(bench)),
                "jig-cutter")
            .get(0);
    assertEquals("plate J1 guide plate", jam.subject());
    assertEquals("6 mm", jam.value());
    assertEquals("less than 6 mm", jam.limit());
    assertEquals("set shop.cutter.tool=5.5", jam.advice());
  }

  /**
   * Of each of 5 guide plates 4 slots and a window, of each of 2 cheeks a slot and 4 roots of tabs,
   * of the register 2 behind its head: 5 x 20 + 2 x 8 + 2.
   */
  @Example
  void cornersThatStayRoundAreCounted() {
    Bench bench = Bench.square(44, 10, 6);
    Length tool = Length.roundedMm(3.175);
    List<Finding> round =
        made(bench, Optional.of(new Cutter.Router(tool, false)), jig(bench)).findings();
    assertEquals(1, round.size(), round.toString());
    assertEquals(Finding.Severity.NOTE, round.get(0).severity());
    assertEquals("118 inside corners stay round: radius", round.get(0).message());
    assertEquals("1.5875 mm", round.get(0).value());
    assertEquals(
        List.of(), made(bench, Optional.of(new Cutter.Router(tool, true)), jig(bench)).findings());
    assertEquals(
        List.of(),
        made(bench, Optional.of(new Cutter.Laser(Length.roundedMm(0.15))), jig(bench)).findings());
  }

  @Example
  void aHoleNoLargerThanTheBitIsDrilled() {
    Bench bench = Bench.square(44, 5, 8);
    for (double tool : List.of(4.9, 5.0)) {
      Pattern path =
          sheets(
                  made(
                      bench,
                      Optional.of(new Cutter.Router(Length.roundedMm(tool), false)),
                      jig(bench)),
                  true)
              .get(0);
      boolean drilled =
          path.features().stream().anyMatch(feature -> feature.operation() == Operation.DRILL);
      assertEquals(tool >= 5, drilled);
    }
  }

  private static Geometry material(Pattern sheet, Outline boundary) {
    Geometry material = Polygons.of(boundary);
    for (Pattern.Feature feature : sheet.features()) {
      if (feature.operation() == Operation.CUT_INSIDE || feature.operation() == Operation.DRILL) {
        material = material.difference(Polygons.of(feature.outline()));
      }
    }
    return material;
  }

  private static Geometry swept(Pattern path, double radius) {
    Geometry swept = new GeometryFactory().createPolygon();
    for (Pattern.Feature feature : path.features()) {
      if (feature.operation() == Operation.CUT_INSIDE
          || feature.operation() == Operation.CUT_OUTSIDE) {
        swept =
            swept.union(
                Polygons.of(feature.outline()).getExteriorRing().buffer(radius - CHORDS_MM, 16));
      }
    }
    return swept;
  }

  private static List<Polygon> edges(Pattern sheet) {
    return sheet.features().stream()
        .filter(feature -> feature.operation() == Operation.CUT_OUTSIDE)
        .map(feature -> Polygons.of(feature.outline()))
        .toList();
  }

  private static List<Pattern> sheets(MadePatterns made, boolean path) {
    return made.patterns().stream()
        .filter(pattern -> pattern.name().startsWith("jig/sheet-"))
        .filter(pattern -> pattern.name().endsWith("-path") == path)
        .toList();
  }

  private static List<Finding> warnings(MadePatterns made, String rule) {
    return made.findings().stream()
        .filter(finding -> finding.severity() == Finding.Severity.WARNING)
        .filter(finding -> finding.rule().equals(rule))
        .toList();
  }

  private static Length set(Finding advice, Unit units) {
    String value = advice.advice().substring(advice.advice().indexOf('=') + 1);
    if (units == Unit.MM) {
      return Length.roundedMm(Double.parseDouble(value));
    }
    String[] parts = value.split("[-/]");
    return switch (parts.length) {
      case 1 -> Length.inches(Long.parseLong(parts[0]), 1);
      case 2 -> Length.inches(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
      default ->
          Length.inches(Long.parseLong(parts[0]), 1)
              .plus(Length.inches(Long.parseLong(parts[1]), Long.parseLong(parts[2])));
    };
  }

  private static Jig jig(Bench bench) {
    Optional<Jig> jig = JigMaker.make(bench.rack()).jig();
    Assume.that(jig.isPresent());
    return jig.get();
  }

  private static MadePatterns made(Bench bench, Optional<Cutter> cutter, Jig jig) {
    return made(bench, shop(bench, cutter, 600, 400), jig);
  }

  private static MadePatterns made(Bench bench, Shop shop, Jig jig) {
    return Patterns.of(shop, bench.units(), Framing.frame(bench.rack()), Optional.of(jig));
  }

  private static Shop shop(Bench bench, Optional<Cutter> cutter, double width, double height) {
    return new Shop(
        Optional.empty(),
        new JigSheet(bench.sheet(), Length.roundedMm(width), Length.roundedMm(height)),
        Optional.empty(),
        cutter,
        Paper.A4,
        Length.mm(6));
  }
}
