package org.slatwright.api.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.slatwright.api.model.Points.box;
import static org.slatwright.api.model.Points.point;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;

class PlacementTest {

  private static final Shape BOARD = new Shape.Bar(Length.mm(700), Length.mm(90), Length.mm(20));

  @Test
  void aPartLaidAlongTheRackKeepsItsAxes() {
    Placement lying = new Placement(point(5, 6, 7), Direction.PLUS_X, Direction.PLUS_Y);

    assertEquals(Direction.PLUS_Z, lying.thickness());
    assertEquals(point(6, 8, 10), lying.toRack(point(1, 2, 3)));
    assertEquals(box(point(5, 6, 7), point(705, 96, 27)), lying.box(BOARD));
  }

  /** Standing, its width to the left: x = 100 - 2, y = 50 - 3, z = 1, as a matrix would have it. */
  @Test
  void aPartMayStandAndFaceTheViewer() {
    Placement standing = new Placement(point(100, 50, 0), Direction.PLUS_Z, Direction.MINUS_X);

    assertEquals(Direction.MINUS_Y, standing.thickness());
    assertEquals(point(98, 47, 1), standing.toRack(point(1, 2, 3)));
    assertEquals(box(point(10, 30, 0), point(100, 50, 700)), standing.box(BOARD));
  }

  @Property
  void theBoxIsAsLargeAsThePartWhicheverWayItLies(
      @ForAll Direction length, @ForAll Direction width) {
    Assume.that(length.axis() != width.axis());
    Placement placement = new Placement(point(1, 2, 3), length, width);

    Box box = placement.box(BOARD);

    assertEquals(Length.mm(700), box.size(length.axis()));
    assertEquals(Length.mm(90), box.size(width.axis()));
    assertEquals(Length.mm(20), box.size(placement.thickness().axis()));
  }

  @Test
  void lengthAndWidthAreNotParallel() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Placement(Point3.ORIGIN, Direction.PLUS_Y, Direction.MINUS_Y));
  }
}
