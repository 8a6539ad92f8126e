package org.slatwright.api.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.api.model.Points.box;
import static org.slatwright.api.model.Points.point;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

/** A block of 100 × 60 × 40, drilled 15 deep at 7 along and 9 across on any of its faces. */
class PieceTest {

  private static final Placement AS_MODELLED =
      new Placement(Point3.ORIGIN, Direction.PLUS_X, Direction.PLUS_Y);

  @Test
  void aHoleStartsWhereItsFaceLies() {
    assertBore(Face.FACE_SIDE, point(7, 9, 40), Direction.MINUS_Z);
    assertBore(Face.BACK, point(7, 9, 0), Direction.PLUS_Z);
    assertBore(Face.FACE_EDGE, point(7, 0, 9), Direction.PLUS_Y);
    assertBore(Face.BACK_EDGE, point(7, 60, 9), Direction.MINUS_Y);
    assertBore(Face.START_END, point(0, 7, 9), Direction.PLUS_X);
    assertBore(Face.FAR_END, point(100, 7, 9), Direction.MINUS_X);
  }

  /** Length up, width to the left, thickness to the viewer: x = 200 - 9, y = 80 - 40, z = 7. */
  @Test
  void aHoleGoesWhereThePieceGoes() {
    Piece standing =
        piece(
            Face.FACE_SIDE, new Placement(point(200, 80, 0), Direction.PLUS_Z, Direction.MINUS_X));

    assertEquals(box(point(140, 40, 0), point(200, 80, 100)), standing.box());
    assertEquals(
        new Bore(point(191, 40, 7), Direction.PLUS_Y, Length.mm(6), Length.mm(15)),
        standing.bore(standing.part().hole("a")));
  }

  @Property
  void aDrillEntersAFaceAndEndsInTheWoodWhicheverWayThePieceLies(
      @ForAll Face face, @ForAll Direction length, @ForAll Direction width) {
    Assume.that(length.axis() != width.axis());
    Piece piece = piece(face, new Placement(point(500, 500, 500), length, width));

    Bore bore = piece.bore(piece.part().hole("a"));

    Axis axis = bore.inward().axis();
    Box box = piece.box();
    Length entered = bore.inward().sign() > 0 ? box.low().along(axis) : box.high().along(axis);
    assertEquals(entered, bore.mouth().along(axis));
    Point3 end = bore.mouth().moved(bore.inward(), bore.depth());
    for (Axis each : Axis.values()) {
      assertTrue(box.low().along(each).isLessThan(end.along(each)));
      assertTrue(box.high().along(each).isMoreThan(end.along(each)));
    }
  }

  @Test
  void aRodFillsASquareBox() {
    Shape rod = new Shape.Rod(Length.mm(79), Length.mm(10));

    assertEquals(box(point(0, 0, 0), point(79, 10, 10)), AS_MODELLED.box(rod));
  }

  private static void assertBore(Face face, Point3 mouth, Direction inward) {
    Piece piece = piece(face, AS_MODELLED);

    assertEquals(
        new Bore(mouth, inward, Length.mm(6), Length.mm(15)),
        piece.bore(piece.part().hole("a")),
        face.word());
  }

  private static Piece piece(Face face, Placement placement) {
    Hole hole = new Hole("a", face, Length.mm(7), Length.mm(9), Length.mm(6), Length.mm(15), false);
    return new Piece("B-1", Parts.block(List.of(hole), 1), placement);
  }
}
