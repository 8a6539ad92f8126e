package org.slatwright.design.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.design.outline.Outlines.Corner;

/** The way of a cutter's middle; JTS buffers, arcs as fine chords, are the judge. */
class OffsetTest {

  /** Of the area, besides what chords take off arcs; a thousandth is the limit for sheets. */
  private static final double ALLOWED = 2e-4;

  @Example
  void aRectangleGrowsByRoundCorners() {
    Outline.Path path = only(Offset.outward(box(60, 40), mm(2)));
    assertEquals(8, path.edges().size());
    assertEquals(4, path.edges().stream().filter(Outline.Arc.class::isInstance).count());
    assertTrue(
        path.edges().contains(new Outline.Line(point(0, -2), point(60, -2))), path.toString());
    assertTrue(
        path.edges().contains(new Outline.Arc(point(60, -2), point(62, 0), point(60, 0), true)),
        path.toString());
  }

  @Example
  void aRectangleShrinksToSharpCorners() {
    assertEquals(
        List.of(
            new Outline.Line(point(2, 2), point(58, 2)),
            new Outline.Line(point(58, 2), point(58, 38)),
            new Outline.Line(point(58, 38), point(2, 38)),
            new Outline.Line(point(2, 38), point(2, 2))),
        startingAt(point(2, 2), only(Offset.inward(box(60, 40), mm(2)))));
  }

  @Example
  void roundCornersKeepTheirCentres() {
    Outline.Path outline = Outlines.roundedRectangle(mm(60), mm(40), mm(3));
    Outline.Path outside = only(Offset.outward(outline, mm(2)));
    assertEquals(8, outside.edges().size());
    assertTrue(
        outside.edges().contains(new Outline.Arc(point(57, -2), point(62, 3), point(57, 3), true)),
        outside.toString());
    Outline.Path inside = only(Offset.inward(outline, mm(2)));
    assertTrue(
        inside.edges().contains(new Outline.Arc(point(57, 2), point(58, 3), point(57, 3), true)),
        inside.toString());
  }

  @Example
  void aRoundCornerAsNarrowAsTheCutterBecomesSharp() {
    Outline.Path outline = Outlines.roundedRectangle(mm(60), mm(40), mm(3));
    assertEquals(4, only(Offset.inward(outline, mm(3))).edges().size());
    assertEquals(4, only(Offset.inward(outline, mm(4))).edges().size());
  }

  @Example
  void aSlotNoWiderThanTheCutterHasNoPath() {
    assertEquals(List.of(), Offset.inward(box(6, 20), mm(3)));
    assertEquals(List.of(), Offset.inward(box(6, 20), mm(4)));
    assertEquals(1, Offset.inward(box(6, 20), new Length(2_999_000)).size());
  }

  /** Between the tabs of a comb the cutter stays out, and cuts no line there and back. */
  @Example
  void aNotchNoWiderThanTheCutterIsPassedBy() {
    for (long tool : List.of(3, 4)) {
      Outline.Path path = only(Offset.outward(notched(6), mm(tool)));
      assertTrue(
          path.edges().stream().allMatch(edge -> edge.from().y().inMm() < 41 + tool),
          path.toString());
      assertLikeBuffer(notched(6), tool);
    }
  }

  @Example
  void aWaistTooNarrowLeavesTwoPaths() {
    Outline.Path dumbbell =
        sharp(
            0, 0, 20, 0, 20, 8, 40, 8, 40, 0, 60, 0, 60, 20, 40, 20, 40, 12, 20, 12, 20, 20, 0, 20);
    assertEquals(2, Offset.inward(dumbbell, mm(3)).size());
    assertEquals(1, Offset.inward(dumbbell, mm(1)).size());
  }

  @Property(tries = 300)
  void everyOffsetEnclosesWhatABufferDoes(
      @ForAll("outlines") Outline.Path outline, @ForAll("distances") double distance) {
    assertLikeBuffer(outline, distance);
  }

  private static void assertLikeBuffer(Outline.Path outline, double distance) {
    Length aside = Length.roundedMm(distance);
    Polygon area = Polygons.of(outline);
    assertLike(buffer(area, distance), Offset.outward(outline, aside), outline);
    assertLike(buffer(area, -distance), Offset.inward(outline, aside), outline);
  }

  private static void assertLike(
      Geometry expected, List<Outline.Path> paths, Outline.Path outline) {
    Geometry enclosed = expected.getFactory().createPolygon();
    for (Outline.Path path : paths) {
      Polygon polygon = Polygons.of(path);
      assertTrue(polygon.isValid(), () -> path + " of " + outline);
      enclosed = enclosed.symDifference(polygon);
    }
    double difference = enclosed.symDifference(expected).getArea();
    double chords = Polygons.TOLERANCE_MM * expected.getLength();
    assertTrue(
        difference <= ALLOWED * Polygons.of(outline).getArea() + chords,
        () -> difference + " mm2 off: " + paths + " of " + outline);
  }

  private static Geometry buffer(Polygon area, double distance) {
    BufferParameters fine = new BufferParameters(256);
    fine.setSimplifyFactor(1e-4);
    return BufferOp.bufferOp(area, distance, fine);
  }

  @Provide
  Arbitrary<Double> distances() {
    return Arbitraries.doubles().between(0.05, 8).ofScale(3);
  }

  /** An L with a slot in its edge, its corners sharp or round. */
  @Provide
  Arbitrary<Outline.Path> outlines() {
    Arbitrary<Integer> size = Arbitraries.integers().between(8, 40);
    Arbitrary<Integer> radius = Arbitraries.integers().between(0, 4);
    return Combinators.combine(size, size, size, size, radius, radius, radius)
        .as(
            (a, b, c, d, outer, inner, tip) ->
                Outlines.rightAngled(
                    List.of(
                        corner(0, 0, outer),
                        corner(a + b + c, 0, tip),
                        corner(a + b + c, d, tip),
                        corner(a + b, d, inner),
                        corner(a + b, d + 10, 0),
                        corner(a, d + 10, 0),
                        corner(a, d + a + b, outer),
                        corner(0, d + a + b, tip))));
  }

  private static Outline.Path notched(int width) {
    return sharp(0, 0, 60, 0, 60, 40, 30 + width, 40, 30 + width, 20, 30, 20, 30, 40, 0, 40);
  }

  private static Outline.Path sharp(int... xy) {
    return Outlines.rightAngled(
        IntStream.range(0, xy.length / 2)
            .mapToObj(i -> corner(xy[2 * i], xy[2 * i + 1], 0))
            .toList());
  }

  private static Corner corner(int x, int y, int radius) {
    return Corner.round(mm(x), mm(y), mm(radius));
  }

  private static Outline.Path box(long width, long height) {
    return Outlines.rectangle(Point2.ORIGIN, mm(width), mm(height));
  }

  private static Outline.Path only(List<Outline.Path> paths) {
    assertEquals(1, paths.size(), paths.toString());
    return paths.get(0);
  }

  private static List<Outline.Edge> startingAt(Point2 start, Outline.Path path) {
    List<Outline.Edge> edges = new ArrayList<>(path.edges());
    while (!edges.get(0).from().equals(start)) {
      edges.add(edges.remove(0));
    }
    return edges;
  }

  private static Point2 point(long x, long y) {
    return new Point2(mm(x), mm(y));
  }

  private static Length mm(long mm) {
    return Length.mm(mm);
  }
}
