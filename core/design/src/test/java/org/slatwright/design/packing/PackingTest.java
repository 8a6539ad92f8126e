package org.slatwright.design.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.slatwright.api.measure.Length;
import org.slatwright.design.outline.Outlines;
import org.slatwright.design.outline.Polygons;

/** What a packing promises; JTS measures the shapes themselves, not the boxes that cover them. */
class PackingTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double ROUNDING_MM = 1e-6;

  @Example
  void rectanglesThatJustFillASheetTakeOne() {
    List<Polygon> six = Collections.nCopies(6, rectangle(100, 50));
    assertEquals(1, sheets(new Packing(310, 105, 5), six));
    assertEquals(2, sheets(new Packing(309.9, 105, 5), six));
  }

  @Example
  void aShapeAsLargeAsTheSheetLiesInItTurnedIfNeedBe() {
    assertEquals(
        Optional.of(List.of(new Spot(0, 0, 0, 1))),
        new Packing(400, 600, 3).place(List.of(rectangle(600, 400))));
  }

  @Example
  void aShapeLargerThanTheSheetHasNoPlace() {
    assertEquals(
        Optional.empty(),
        new Packing(400, 600, 3).place(List.of(rectangle(10, 10), rectangle(600.001, 400))));
  }

  @Example
  void noShapesTakeNoSheet() {
    assertEquals(Optional.of(List.of()), new Packing(400, 600, 3).place(List.of()));
  }

  /** Box beside box they would take 205 mm. */
  @Example
  void twoLsLieInOneAnothersArms() {
    List<Polygon> two = List.of(l(100, 40), l(100, 40));
    assertEquals(1, sheets(new Packing(145, 145, 5), two));
    assertEquals(2, sheets(new Packing(144.9, 144.9, 5), two));
  }

  @Example
  void aRoundedLTakesAStripIntoItsArm() {
    Polygon strip = Polygons.of(Outlines.roundedRectangle(mm(50), mm(50), mm(3)));
    assertEquals(1, sheets(new Packing(100, 100, 5), List.of(l(100, 40), strip)));
  }

  @Property(tries = 300)
  void allLieInTheirSheetsAndNoneCloserThanTheSpacing(
      @ForAll @Size(min = 1, max = 14) List<@From("shapes") Polygon> shapes,
      @ForAll @DoubleRange(min = 0, max = 20) double spacing) {
    Packing packing = new Packing(300, 260, spacing);
    List<Spot> spots = packing.place(shapes).orElseThrow();
    List<Polygon> placed =
        IntStream.range(0, shapes.size())
            .mapToObj(i -> placed(shapes.get(i), spots.get(i)))
            .toList();
    Envelope sheet = new Envelope(0, packing.widthMm(), 0, packing.heightMm());
    sheet.expandBy(ROUNDING_MM);
    for (int i = 0; i < placed.size(); i++) {
      assertTrue(sheet.contains(placed.get(i).getEnvelopeInternal()), placed.get(i).toString());
      for (int j = 0; j < i; j++) {
        if (spots.get(i).sheet() == spots.get(j).sheet()) {
          double apart = placed.get(i).distance(placed.get(j));
          assertTrue(apart >= spacing - ROUNDING_MM, i + " and " + j + ": " + apart);
          assertTrue(
              placed.get(i).intersection(placed.get(j)).getArea() < ROUNDING_MM, i + " on " + j);
        }
      }
    }
    assertEquals(spots, packing.place(shapes).orElseThrow());
  }

  @Property(tries = 200)
  void noSheetHasRoomForAShapeOfALaterOne(
      @ForAll @Size(min = 1, max = 20) List<@From("rectangles") Polygon> shapes) {
    List<Spot> spots = new Packing(300, 260, 0).place(shapes).orElseThrow();
    double area = shapes.stream().mapToDouble(Polygon::getArea).sum() / (300 * 260);
    int sheets = 1 + spots.stream().mapToInt(Spot::sheet).max().orElseThrow();
    assertTrue(sheets >= Math.ceil(area - 1e-9), sheets + " sheets hold " + area);
    for (int sheet = 0; sheet < sheets - 1; sheet++) {
      for (int i = 0; i < shapes.size(); i++) {
        boolean later = spots.get(i).sheet() > sheet;
        assertFalse(
            later
                && new EveryPlace(300, 260, 0)
                    .takesToo(shapes.get(i), onSheet(sheet, shapes, spots)),
            shapes.get(i) + " could lie on sheet " + sheet);
      }
    }
  }

  private static List<Envelope> onSheet(int sheet, List<Polygon> shapes, List<Spot> spots) {
    return IntStream.range(0, shapes.size())
        .filter(i -> spots.get(i).sheet() == sheet)
        .mapToObj(i -> placed(shapes.get(i), spots.get(i)).getEnvelopeInternal())
        .toList();
  }

  /**
   * Every order, every turn and every corner that shapes make, tried one by one. A quick rule
   * misses one now and then: two squares, of which the larger lies lower the other way up.
   */
  @Property(tries = 400)
  void fewRectanglesHardlyEverTakeMoreSheetsThanTheBestOfAllOrders(
      @ForAll @Size(min = 2, max = 4) List<@From("rectangles") Polygon> shapes,
      @ForAll @DoubleRange(min = 0, max = 10) double spacing) {
    Assume.that(new EveryPlace(300, 260, spacing).takes(shapes));
    int sheets = sheets(new Packing(300, 260, spacing), shapes);
    Statistics.label("one sheet where one will do")
        .collect(sheets == 1)
        .coverage(one -> one.check(true).percentage(share -> share > 97));
  }

  private static int sheets(Packing packing, List<Polygon> shapes) {
    return 1 + packing.place(shapes).orElseThrow().stream().mapToInt(Spot::sheet).max().orElse(-1);
  }

  private static Polygon placed(Polygon shape, Spot spot) {
    Polygon turned =
        (Polygon)
            AffineTransformation.rotationInstance(
                    0 == spot.quarterTurns() % 2 ? 0 : 1, 0 == spot.quarterTurns() % 2 ? 1 : 0)
                .transform(shape);
    Polygon half =
        spot.quarterTurns() < 2
            ? turned
            : (Polygon) AffineTransformation.scaleInstance(-1, -1).transform(turned);
    Envelope box = half.getEnvelopeInternal();
    return (Polygon)
        AffineTransformation.translationInstance(
                spot.xMm() - box.getMinX(), spot.yMm() - box.getMinY())
            .transform(half);
  }

  @Provide
  Arbitrary<Polygon> rectangles() {
    Arbitrary<Double> side = Arbitraries.doubles().between(20, 240).ofScale(1);
    return Combinators.combine(side, side).as(PackingTest::rectangle);
  }

  @Provide
  Arbitrary<Polygon> shapes() {
    Arbitrary<Double> side = Arbitraries.doubles().between(30, 180).ofScale(3);
    Arbitrary<Polygon> ls =
        Combinators.combine(side, Arbitraries.doubles().between(0.1, 0.9))
            .as((length, share) -> l(length, length * share));
    Arbitrary<Polygon> hulls =
        Combinators.combine(
                Arbitraries.doubles().between(-80, 80).list().ofSize(8),
                Arbitraries.doubles().between(-80, 80).list().ofSize(8))
            .as(PackingTest::star);
    return Arbitraries.oneOf(rectangles(), ls, hulls);
  }

  /** A jagged shape: corners at uneven distances all round a middle. */
  private static Polygon star(List<Double> a, List<Double> b) {
    List<Coordinate> corners = new ArrayList<>();
    for (int i = 0; i < a.size(); i++) {
      double angle = 2 * Math.PI * i / a.size();
      double radius = 10 + Math.abs(a.get(i)) / 2 + Math.abs(b.get(i)) / 2;
      corners.add(new Coordinate(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    corners.add(corners.get(0).copy());
    return FACTORY.createPolygon(corners.toArray(Coordinate[]::new));
  }

  private static Polygon rectangle(double width, double height) {
    return (Polygon) FACTORY.toGeometry(new Envelope(7, 7 + width, -3, height - 3));
  }

  private static Polygon l(double length, double arm) {
    return FACTORY.createPolygon(
        new Coordinate[] {
          new Coordinate(0, 0),
          new Coordinate(length, 0),
          new Coordinate(length, arm),
          new Coordinate(arm, arm),
          new Coordinate(arm, length),
          new Coordinate(0, length),
          new Coordinate(0, 0)
        });
  }

  private static Length mm(long mm) {
    return Length.mm(mm);
  }
}
