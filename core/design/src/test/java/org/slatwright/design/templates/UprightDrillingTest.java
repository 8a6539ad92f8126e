package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/** The strip, laid on every upright of the rack in turn, its floor end on the floor. */
class UprightDrillingTest {

  @Provide
  Arbitrary<Drawn> racks() {
    return Drawn.any();
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void itFitsEveryUprightOfAnExample(Drawn rack) {
    assertFits(rack);
  }

  @Property(tries = 60)
  void itFitsEveryUpright(@ForAll("racks") Drawn rack) {
    assertFits(rack);
  }

  @Test
  void everyUprightIsNamedWithItsPlace() {
    List<String> texts = new Ruled(Drawn.example("seed-trays").draft("U-drilling")).texts();
    assertTrue(
        texts.containsAll(
            List.of("left frame: U-1 front, U-2 rear", "right frame: U-3 front, U-4 rear")),
        texts::toString);
  }

  @Test
  void holesAndRailsOfAnInchRackAreNumberedInInches() {
    List<String> texts = new Ruled(Drawn.example("ware-boards").draft("U-drilling")).texts();
    assertTrue(
        texts.containsAll(
            List.of(
                "underside 5",
                "a 5 3/4",
                "top 6 1/2",
                "Ø 1/2\" through, 3/4\" from the face edge")),
        texts::toString);
  }

  private static void assertFits(Drawn rack) {
    Ruled strip = new Ruled(rack.draft("U-drilling"));
    assertEquals(2, strip.folds().size());
    double left = strip.folds().get(0);
    double right = strip.folds().get(1);
    List<Double> levels = strip.levels(left, right);
    double floor = levels.get(0);
    double top = levels.get(levels.size() - 1);
    for (Piece upright : rack.assembly().pieces(Role.UPRIGHT)) {
      Box box = upright.box();
      assertEquals(box.high().x().minus(box.low().x()).inMm(), right - left, Ruled.EXACT);
      assertEquals(box.high().z().inMm(), top - floor, Ruled.EXACT);
      assertHoles(strip, upright, left, floor);
      assertRails(strip, rails(rack, upright), upright, left, floor);
      assertRailEdges(levels, rails(rack, upright), floor);
      for (Hole hole : upright.part().holes()) {
        Length height = upright.bore(hole).mouth().z();
        assertTrue(strip.texts().contains(hole.name() + " " + rack.lengths().number(height)));
      }
    }
  }

  private static void assertHoles(Ruled strip, Piece upright, double left, double floor) {
    List<Bore> bores = upright.part().holes().stream().map(upright::bore).toList();
    assertEquals(bores.size(), strip.circles().size());
    for (int i = 0; i < bores.size(); i++) {
      Bore bore = bores.get(i);
      Figure.Circle circle = strip.circles().get(i);
      assertEquals(bore.diameter().inMm() / 2, circle.radius());
      assertEquals(fromTheLeft(upright, bore), circle.centre().x() - left, Ruled.EXACT);
      assertEquals(bore.mouth().z().inMm(), circle.centre().y() - floor, Ruled.EXACT);
    }
  }

  /** Seen by whoever stands before the drilled face: in front of the rack or behind it. */
  static double fromTheLeft(Piece upright, Bore bore) {
    Box box = upright.box();
    return bore.inward() == Direction.PLUS_Y
        ? bore.mouth().x().minus(box.low().x()).inMm()
        : box.high().x().minus(bore.mouth().x()).inMm();
  }

  /** What is tinted is where they lie against the back of the upright. */
  private static void assertRails(
      Ruled strip, List<Box> rails, Piece upright, double left, double floor) {
    List<Envelope> boxes =
        strip.boxes().stream()
            .filter(
                box ->
                    box.getMinX() > left - Ruled.EXACT && box.getMinY() < floor + height(upright))
            .toList();
    assertEquals(rails.size(), boxes.size());
    for (int i = 0; i < rails.size(); i++) {
      double width = rails.get(i).high().x().minus(rails.get(i).low().x()).inMm();
      double onFace = Math.min(width, upright.part().shape().width().inMm());
      assertEquals(onFace, boxes.get(i).getWidth(), Ruled.EXACT);
      double beside = (upright.part().shape().width().inMm() - onFace) / 2;
      assertEquals(beside, boxes.get(i).getMinX() - left, 2 * Ruled.EXACT, "in the middle");
      assertEquals(rails.get(i).low().z().inMm(), boxes.get(i).getMinY() - floor, Ruled.EXACT);
      assertEquals(rails.get(i).high().z().inMm(), boxes.get(i).getMaxY() - floor, Ruled.EXACT);
    }
  }

  /** They run over the whole face, to be pencilled at its edges. */
  private static void assertRailEdges(List<Double> levels, List<Box> rails, double floor) {
    for (Box rail : rails) {
      for (Length edge : List.of(rail.low().z(), rail.high().z())) {
        assertTrue(levels.stream().anyMatch(y -> Ruled.near(y - floor, edge.inMm())));
      }
    }
  }

  private static double height(Piece upright) {
    return upright.part().shape().length().inMm();
  }

  private static List<Box> rails(Drawn rack, Piece upright) {
    Stream<Joint> joints =
        rack.assembly().joints().stream().filter(joint -> joint.upright().equals(upright));
    return joints.map(joint -> joint.rail().box()).toList();
  }
}
