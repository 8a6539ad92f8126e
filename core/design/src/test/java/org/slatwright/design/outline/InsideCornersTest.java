package org.slatwright.design.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.design.outline.Outlines.Corner;

/** Corners that a round cutter cannot fill, relieved, and how narrow an outline is. */
class InsideCornersTest {

  private static final double CHORDS_MM = 0.003;

  @Example
  void anOpeningHasThemAtItsCornersAPieceInItsNotches() {
    assertEquals(4, InsideCorners.count(slot(), Side.INSIDE));
    assertEquals(0, InsideCorners.count(slot(), Side.OUTSIDE));
    assertEquals(2, InsideCorners.count(tee(), Side.OUTSIDE));
    assertEquals(6, InsideCorners.count(tee(), Side.INSIDE));
    assertEquals(
        0, InsideCorners.count(Outlines.roundedRectangle(mm(20), mm(20), mm(3)), Side.INSIDE));
  }

  @Example
  void aRelievedSlotTakesASquareTabAndStaysAsWideInItsMiddle() {
    Length bit = mm(3);
    Outline.Path relieved =
        InsideCorners.relieved(slot(), Side.INSIDE, bit.half().times(11).dividedBy(10));
    assertEquals(0, InsideCorners.count(relieved, Side.INSIDE));
    List<Outline.Path> paths = Offset.inward(relieved, bit.half());
    assertEquals(1, paths.size());
    Geometry cut = Polygons.of(paths.get(0)).buffer(1.5, 128);
    Polygon tab = Polygons.of(slot());
    assertTrue(cut.buffer(CHORDS_MM).covers(tab));
    assertTrue(cut.difference(tab).getArea() < 4 * 1.65 * 1.65);
    assertEquals(6, across(cut, 6), 2 * CHORDS_MM);
  }

  @Example
  void aNotchIsRelievedIntoThePiece() {
    Length bit = mm(3);
    Outline.Path relieved =
        InsideCorners.relieved(tee(), Side.OUTSIDE, bit.half().times(11).dividedBy(10));
    Geometry left = Polygons.of(Offset.outward(relieved, bit.half()).get(0)).buffer(-1.5, 128);
    Polygon wanted = Polygons.of(tee());
    assertTrue(wanted.buffer(CHORDS_MM).covers(left));
    assertTrue(wanted.difference(left).getArea() > 1);
  }

  @Example
  void aCornerWithoutRoomStaysAsItIs() {
    assertEquals(slot(), InsideCorners.relieved(slot(), Side.INSIDE, mm(3)));
  }

  @Example
  void aSlotIsAsNarrowAsItsShorterSide() {
    assertEquals(mm(6), Narrowest.of(slot(), Side.INSIDE));
    assertEquals(mm(100), Narrowest.of(slot(), Side.OUTSIDE));
  }

  @Example
  void aNotchIsAsNarrowAsItsMouth() {
    Outline.Path comb =
        Outlines.rightAngled(
            List.of(
                sharp(0, 0),
                sharp(40, 0),
                sharp(40, 30),
                sharp(25, 30),
                sharp(25, 10),
                sharp(18, 10),
                sharp(18, 30),
                sharp(0, 30)));
    assertEquals(mm(7), Narrowest.of(comb, Side.OUTSIDE));
  }

  private static double across(Geometry cut, double y) {
    return cut.getFactory()
        .createLineString(new Coordinate[] {new Coordinate(-50, y), new Coordinate(50, y)})
        .intersection(cut)
        .getLength();
  }

  private static Outline.Path slot() {
    return Outlines.rectangle(Point2.ORIGIN, mm(6), mm(12));
  }

  private static Outline.Path tee() {
    return Outlines.rightAngled(
        List.of(
            sharp(10, 0),
            sharp(20, 0),
            sharp(20, 20),
            sharp(30, 20),
            sharp(30, 30),
            sharp(0, 30),
            sharp(0, 20),
            sharp(10, 20)));
  }

  private static Corner sharp(long x, long y) {
    return Corner.sharp(mm(x), mm(y));
  }

  private static Length mm(long mm) {
    return Length.mm(mm);
  }
}
