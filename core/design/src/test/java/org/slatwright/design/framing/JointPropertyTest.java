package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/** What holds of the dowel joints of every rack. */
class JointPropertyTest {

  /** A dowel of an odd number of nanometres lies half of one beside the axis of its hole. */
  private static final long HALF_A_NANOMETRE = 1;

  @Property(tries = 40)
  void theTwoHolesOfADowelMeetOnOneAxisToTheNanometre(@ForAll("racks") Framed rack) {
    rack.assembly().joints().forEach(JointPropertyTest::assertHolesMeet);
  }

  @Property(tries = 40)
  void aDowelFillsItsTwoHolesAndStandsOutOfNeither(@ForAll("racks") Framed rack) {
    for (Joint joint : rack.assembly().joints()) {
      for (Joint.Pin pin : joint.pins()) {
        Cylinder dowel = Cylinder.filling(pin.dowel().box(), Axis.Y);
        Cylinder through = Cylinder.of(joint.upright().bore(pin.uprightHole()));
        Cylinder blind = Cylinder.of(joint.rail().bore(pin.railHole()));

        for (Axis across : List.of(Axis.X, Axis.Z)) {
          assertTrue(dowel.offset(through, across) <= HALF_A_NANOMETRE, joint.id());
          assertTrue(dowel.offset(blind, across) <= HALF_A_NANOMETRE, joint.id());
          assertEquals(through.span(across).size(), dowel.span(across).size(), joint.id());
        }
        Cylinder both = Cylinder.filling(joint.upright().box().around(joint.rail().box()), Axis.Y);
        assertTrue(dowel.isInside(both, 0), joint.id());
        assertTrue(dowel.isInside(union(through, blind), HALF_A_NANOMETRE), joint.id());
      }
    }
  }

  @Property(tries = 40)
  void aDowelEndsFlushWithTheOuterFaceAndShortOfTheBottomOfItsHole(@ForAll("racks") Framed rack) {
    for (Joint joint : rack.assembly().joints()) {
      for (Joint.Pin pin : joint.pins()) {
        Bore through = joint.upright().bore(pin.uprightHole());
        Bore blind = joint.rail().bore(pin.railHole());
        Box dowel = pin.dowel().box();
        boolean backwards = through.inward() == Direction.PLUS_Y;
        Length outer = backwards ? dowel.low().y() : dowel.high().y();
        Length inner = backwards ? dowel.high().y() : dowel.low().y();

        assertEquals(through.mouth().y(), outer, joint.id());
        Length embedment = inner.minus(blind.mouth().y()).abs();
        assertEquals(rack.rack().joint().embedment(), embedment, joint.id());
        assertTrue(embedment.isLessThan(blind.depth()), "room for glue in " + joint.id());
      }
    }
  }

  @Property(tries = 40)
  void everyHoleLiesInsideItsPartAndABlindOneDoesNotComeOut(@ForAll("racks") Framed rack) {
    for (Piece piece : rack.assembly().pieces()) {
      for (Hole hole : piece.part().holes()) {
        Bore bore = piece.bore(hole);
        Cylinder cylinder = Cylinder.of(bore);
        Axis axis = bore.inward().axis();
        assertTrue(cylinder.isInside(piece.box()), piece.id() + hole);
        Length reach = bore.mouth().moved(bore.inward(), bore.depth()).along(axis);
        boolean atFace =
            reach.equals(piece.box().low().along(axis))
                || reach.equals(piece.box().high().along(axis));
        assertEquals(hole.through(), atFace, piece.id() + hole);
      }
    }
  }

  @Property(tries = 40)
  void everyHoleStartsOnTheFaceThatItNames(@ForAll("racks") Framed rack) {
    for (Piece piece : rack.assembly().pieces()) {
      for (Hole hole : piece.part().holes()) {
        Bore bore = piece.bore(hole);
        Axis axis = bore.inward().axis();
        Length face =
            bore.inward().sign() > 0
                ? piece.box().low().along(axis)
                : piece.box().high().along(axis);
        assertEquals(face, bore.mouth().along(axis), piece.id() + hole);
      }
    }
  }

  @Property(tries = 40)
  void noTwoHolesOfAPartRunIntoOneAnother(@ForAll("racks") Framed rack) {
    for (Part part : rack.assembly().parts()) {
      Piece piece =
          rack.assembly().pieces().stream().filter(p -> p.part().equals(part)).findFirst().get();
      List<Cylinder> holes = part.holes().stream().map(piece::bore).map(Cylinder::of).toList();
      for (int i = 0; i < holes.size(); i++) {
        for (int j = i + 1; j < holes.size(); j++) {
          assertTrue(holes.get(i).wallTo(holes.get(j)) > 0, part.mark() + " " + i + " " + j);
        }
      }
    }
  }

  @Property(tries = 30)
  void everyHoleIsFilledByOneDowelOnEveryPiece(@ForAll("racks") Framed rack) {
    for (Piece piece : rack.assembly().pieces()) {
      List<Hole> filled =
          rack.assembly().joints().stream()
              .flatMap(
                  joint ->
                      joint.pins().stream()
                          .flatMap(
                              pin ->
                                  joint.upright().equals(piece)
                                      ? Stream.of(pin.uprightHole())
                                      : joint.rail().equals(piece)
                                          ? Stream.of(pin.railHole())
                                          : Stream.empty()))
              .toList();
      assertEquals(piece.part().holes().size(), filled.size(), piece.id());
      assertTrue(filled.containsAll(piece.part().holes()), piece.id());
    }
  }

  @Property(tries = 40)
  void railsSitFlushBetweenTheUprightsTheyJoin(@ForAll("racks") Framed rack) {
    for (Joint joint : rack.assembly().joints()) {
      Box upright = joint.upright().box();
      Box rail = joint.rail().box();
      boolean front = upright.high().y().equals(rail.low().y());
      boolean rear = upright.low().y().equals(rail.high().y());
      assertTrue(front || rear, joint.id());
      assertFalse(rail.low().x().isLessThan(upright.low().x()), joint.id());
      assertFalse(rail.high().x().isMoreThan(upright.high().x()), joint.id());
      assertFalse(rail.high().z().isMoreThan(upright.high().z()), joint.id());
      Length unevenness =
          rail.low().x().minus(upright.low().x()).minus(upright.high().x().minus(rail.high().x()));
      assertTrue(unevenness.abs().nanometres() <= 2, "centred in " + joint.id());
    }
  }

  /**
   * Half of 1 33/64 in is 97/128 in, 19 248 437.5 nm: the axes of front and rear are 1 nm apart.
   */
  @Test
  void holesMeetExactlyInStockWithoutAMiddleInWholeNanometres() throws Exception {
    Framed rack =
        Framed.of(
            """
            slatwright: 1
            title: Propagator stand
            units: in
            timber:
              frame: { section: 1 33/64 x 1 31/64, species: western redcedar }
              rails: { section: 1 25/64 x 2 33/64 }
              slats: { section: 3/4 x 3 1/2 }
              dowel: { diameter: 25/64 }
            rack:
              bays: 2
              interior-width: 20
              rail-length: 16
              openings: [ 10 ]
            slats: { per-shelf: 4, run: per-bay }
            joint: { dowels: 2 }
            """);

    assertEquals(1, rack.rack().upright().width().nanometres() % 2);
    rack.assembly().joints().forEach(JointPropertyTest::assertHolesMeet);
    List<Bore> ends =
        rack.piece("R-1").part().holes().stream().map(rack.piece("R-1")::bore).toList();
    // 1 33/64 in = 97 x 396 875 nm = 38 496 875 nm, half of it rounded down 19 248 437 nm
    assertEquals(new Length(19_248_438), ends.get(0).mouth().x());
    assertEquals(new Length(19_248_437), ends.get(2).mouth().x());
  }

  @Provide
  Arbitrary<Framed> racks() {
    return Framed.any();
  }

  private static void assertHolesMeet(Joint joint) {
    for (Joint.Pin pin : joint.pins()) {
      Bore through = joint.upright().bore(pin.uprightHole());
      Bore blind = joint.rail().bore(pin.railHole());
      assertEquals(Role.UPRIGHT, joint.upright().part().role());
      assertEquals(through.inward(), blind.inward(), joint.id());
      assertEquals(through.diameter(), blind.diameter(), joint.id());
      assertEquals(
          blind.mouth(), through.mouth().moved(through.inward(), through.depth()), joint.id());
    }
  }

  private static Cylinder union(Cylinder through, Cylinder blind) {
    return new Cylinder(
        Axis.Y,
        through.x(),
        new Cylinder.Span(
            Math.min(through.y().low(), blind.y().low()),
            Math.max(through.y().high(), blind.y().high())),
        through.z());
  }
}
