package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/** The two ends, laid on the ends of every rail of the rack. */
class RailEndsTest {

  @Provide
  Arbitrary<Drawn> racks() {
    return Drawn.any();
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void theyFitEveryRailOfAnExample(Drawn rack) {
    assertFit(rack);
  }

  @Property(tries = 60)
  void theyFitEveryRail(@ForAll("racks") Drawn rack) {
    assertFit(rack);
  }

  @Test
  void bothDowelsOfAnEndAreReadFromFaceSideAndFaceEdge() {
    List<String> texts = new Ruled(Drawn.example("nursery-bench").draft("R-end")).texts();
    List<String> said = texts.stream().filter(text -> text.contains("from the face side")).toList();
    assertEquals(4, said.size());
    assertTrue(said.get(0).startsWith("a: Ø 10 mm, 22.5 mm from the face side, "), said.get(0));
  }

  private static void assertFit(Drawn rack) {
    Ruled ends = new Ruled(rack.draft("R-end"));
    List<Envelope> faceEdges =
        ends.lines(LineKind.HIDDEN)
            .map(Ruled::around)
            .filter(line -> line.getHeight() == 0)
            .sorted(Comparator.comparing(Envelope::getMinX))
            .toList();
    assertEquals(2, faceEdges.size());
    for (Piece rail : rack.assembly().pieces(Role.RAIL)) {
      Box box = rail.box();
      List<Bore> front = bores(rail, Face.START_END);
      List<Bore> rear = bores(rail, Face.FAR_END);
      List<Figure.Circle> circles = ends.circles();
      assertEquals(front.size() + rear.size(), circles.size());
      for (int i = 0; i < front.size(); i++) {
        double x = front.get(i).mouth().x().minus(box.low().x()).inMm();
        assertHole(circles.get(i), front.get(i), box, faceEdges.get(0), x);
      }
      for (int i = 0; i < rear.size(); i++) {
        double x = box.high().x().minus(rear.get(i).mouth().x()).inMm();
        assertHole(circles.get(front.size() + i), rear.get(i), box, faceEdges.get(1), x);
      }
      faceEdges.forEach(
          edge ->
              assertEquals(
                  box.high().x().minus(box.low().x()).inMm(), edge.getWidth(), Ruled.EXACT));
    }
  }

  private static void assertHole(
      Figure.Circle circle, Bore bore, Box rail, Envelope faceEdge, double fromLeft) {
    assertEquals(fromLeft, circle.centre().x() - faceEdge.getMinX(), Ruled.EXACT);
    assertEquals(
        bore.mouth().z().minus(rail.low().z()).inMm(),
        circle.centre().y() - faceEdge.getMinY(),
        Ruled.EXACT);
    assertEquals(bore.diameter().inMm() / 2, circle.radius());
  }

  private static List<Bore> bores(Piece rail, Face end) {
    return rail.part().holes().stream().filter(hole -> hole.face() == end).map(rail::bore).toList();
  }
}
