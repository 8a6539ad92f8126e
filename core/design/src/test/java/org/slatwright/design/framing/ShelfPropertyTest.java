package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;

/** What holds of the shelves of every rack. */
class ShelfPropertyTest {

  /** Middles are rounded to whole nanometres, on two axes at most: 4 half nanometres. */
  private static final double ROUNDING = 4;

  @Property(tries = 40)
  void everySlatLiesLevelOnTheRailsOfEachFrameItCrosses(@ForAll("racks") Framed rack) {
    for (int shelf = 0; shelf < rack.rack().shelves(); shelf++) {
      for (Piece slat : rack.slats(shelf)) {
        List<Box> bearers = bearers(rack, shelf, slat);
        boolean through = rack.rack().slats().lengths().size() == 1;
        assertEquals(through ? rack.rack().frames() : 2, bearers.size(), slat.id());
        for (Box rail : bearers) {
          assertEquals(rail.high().z(), slat.box().low().z(), slat.id());
          assertFalse(slat.box().low().y().isLessThan(rail.low().y()), slat.id());
          assertFalse(slat.box().high().y().isMoreThan(rail.high().y()), slat.id());
        }
      }
    }
  }

  @Property(tries = 40)
  void slatsOfAShelfLieTheGapApart(@ForAll("racks") Framed rack) {
    int count = rack.rack().slats().count();
    for (int shelf = 0; shelf < rack.rack().shelves(); shelf++) {
      List<Piece> slats = rack.slats(shelf);
      for (int i = 1; i < slats.size(); i++) {
        Box before = slats.get(i - 1).box();
        Box here = slats.get(i).box();
        if (i % count == 0) {
          Length open = here.low().x().minus(before.high().x());
          assertTrue(
              open.isZero() || open.equals(new Length(1)),
              () -> "end to end in the next bay, to the nanometre: " + open);
        } else {
          assertEquals(rack.rack().slats().gap(), here.low().y().minus(before.high().y()));
          assertEquals(before.low().x(), here.low().x());
        }
      }
    }
  }

  @Property(tries = 40)
  void clearHeightsAreAsTheRackSays(@ForAll("racks") Framed rack) {
    List<Length> openings = rack.rack().openings();
    List<Piece> rails = rack.rails(0);

    assertEquals(rack.rack().foot(), rails.get(0).box().low().z());
    for (int shelf = 0; shelf < openings.size(); shelf++) {
      Length top = rack.slats(shelf).get(0).box().high().z();
      assertEquals(openings.get(shelf), rails.get(shelf + 1).box().low().z().minus(top));
    }
    int last = openings.size();
    Length top = rack.slats(last).get(0).box().high().z();
    assertEquals(rack.rack().topAbove(), rack.piece("U-1").box().high().z().minus(top));
  }

  @Property(tries = 40)
  void everyBearingOfEverySlatIsFastened(@ForAll("racks") Framed rack) {
    int bearings = 0;
    for (int shelf = 0; shelf < rack.rack().shelves(); shelf++) {
      for (Piece slat : rack.slats(shelf)) {
        bearings += bearers(rack, shelf, slat).size();
      }
    }

    assertEquals(bearings * rack.rack().fixing().perEnd(), rack.assembly().fasteners().size());
  }

  @Property(tries = 40)
  void everyFastenerGoesThroughItsSlatAndEndsInItsRail(@ForAll("racks") Framed rack) {
    for (Fastener fastener : rack.assembly().fasteners()) {
      Box slat = fastener.through().box();
      Box rail = fastener.into().box();
      Cylinder shank = Cylinder.of(fastener);

      assertEquals(slat.high().z(), fastener.head().z(), "flush with the top of the slat");
      assertEquals(rail.high().z(), slat.low().z());
      assertTrue(shank.isInside(slat.around(rail)), () -> fastener.head().toString());
      assertTrue(within(shank.x(), slat) && within(shank.x(), rail), "within the bearing");
      assertTrue(shank.z().low() < 2 * rail.high().z().nanometres(), "reaches the rail");
      assertTrue(
          shank.y().low() >= 2 * slat.low().y().nanometres()
              && shank.y().high() <= 2 * slat.high().y().nanometres());
    }
  }

  @Property(tries = 80)
  void everyFastenerPassesTheDowelsOfItsRail(@ForAll("racks") Framed rack) {
    List<Joint> joints = rack.assembly().joints();
    for (Fastener fastener : rack.assembly().fasteners()) {
      Cylinder shank = Cylinder.of(fastener);
      for (Joint joint : joints) {
        if (joint.rail().equals(fastener.into())) {
          for (Joint.Pin pin : joint.pins()) {
            Cylinder dowel = Cylinder.filling(pin.dowel().box(), Axis.Y);
            assertTrue(
                shank.clearOf(dowel) >= -ROUNDING,
                () -> fastener.head() + " runs into " + pin.dowel().id() + shank.clearOf(dowel));
          }
        }
      }
    }
  }

  @Test
  void besideATooThickDowelAScrewStaysInItsRail() throws Exception {
    Framed rack =
        Framed.of(
            """
            slatwright: 1
            title: Onion-drying rack
            timber:
              frame: { section: 44 x 44, species: larch }
              slats: { section: 18 x 95 }
              dowel: { diameter: 40 }
            rack: { interior-width: 580, rail-length: 320, upright: 900, openings: [ even ] }
            slats: { per-shelf: 3 }
            joint: { embedment: 60, fixing: { kind: screw } }
            """);

    for (Fastener screw : rack.assembly().fasteners()) {
      assertTrue(within(Cylinder.of(screw).x(), screw.into().box()));
    }
  }

  @Provide
  Arbitrary<Framed> racks() {
    return Framed.any();
  }

  /** The rails of a shelf that lie below some of a slat. */
  private static List<Box> bearers(Framed rack, int shelf, Piece slat) {
    return IntStream.range(0, rack.rack().frames())
        .mapToObj(frame -> rack.rails(frame).get(shelf).box())
        .filter(
            rail ->
                rail.low().x().isLessThan(slat.box().high().x())
                    && slat.box().low().x().isLessThan(rail.high().x()))
        .toList();
  }

  private static boolean within(Cylinder.Span span, Box box) {
    return span.low() >= 2 * box.low().x().nanometres()
        && span.high() <= 2 * box.high().x().nanometres();
  }
}
