package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Joint;

/** The template folded up and put over every joint of the rack in turn. */
class JointWrapTest {

  @Provide
  Arbitrary<Drawn> racks() {
    return Drawn.any();
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void itFitsEveryJointOfAnExample(Drawn rack) {
    assertFits(rack);
  }

  @Property(tries = 60)
  void itFitsEveryJoint(@ForAll("racks") Drawn rack) {
    assertFits(rack);
  }

  private static void assertFits(Drawn rack) {
    Ruled wrap = new Ruled(rack.draft("joint-wrap"));
    assertEquals(2, wrap.folds().size());
    Envelope outline =
        wrap.boxes().stream()
            .filter(box -> box.getMinX() < wrap.folds().get(0) - Ruled.EXACT)
            .findFirst()
            .orElseThrow();
    List<Double> railEdges = wrap.levels(outline.getMinX(), outline.getMaxX());
    assertEquals(2, railEdges.size());
    for (Joint joint : rack.assembly().joints()) {
      Folded folded = new Folded(joint, wrap.folds().get(0), wrap.folds().get(1), railEdges.get(0));
      for (double edge : List.of(outline.getMinX(), outline.getMaxX())) {
        double inner = folded.place(edge, 0)[1];
        assertEquals(folded.railEnd(), inner, Ruled.EXACT, "the edge ends where the rail begins");
      }
      double top = folded.place(0, railEdges.get(1))[2];
      assertEquals(joint.rail().box().high().z().inMm(), top, Ruled.EXACT);
      assertHoles(joint, wrap.circles(), folded);
    }
  }

  private static void assertHoles(Joint joint, List<Figure.Circle> circles, Folded folded) {
    assertEquals(joint.pins().size(), circles.size());
    for (int i = 0; i < circles.size(); i++) {
      Bore bore = joint.upright().bore(joint.pins().get(i).uprightHole());
      double[] place = folded.place(circles.get(i).centre().x(), circles.get(i).centre().y());
      assertEquals(bore.mouth().x().inMm(), place[0], Ruled.EXACT);
      assertEquals(bore.mouth().y().inMm(), place[1], Ruled.EXACT);
      assertEquals(bore.mouth().z().inMm(), place[2], Ruled.EXACT);
      assertEquals(bore.diameter().inMm() / 2, circles.get(i).radius());
    }
  }

  /**
   * The template round the upright of a joint, its lower rail line on the underside of the rail.
   */
  private record Folded(Joint joint, double leftFold, double rightFold, double underside) {

    private boolean inFront() {
      return joint.upright().bore(joint.pins().get(0).uprightHole()).inward() == Direction.PLUS_Y;
    }

    /** Where the rail begins, along the rack's y. */
    double railEnd() {
      Box rail = joint.rail().box();
      return (inFront() ? rail.low().y() : rail.high().y()).inMm();
    }

    /** Where a point of the flat template comes to lie, in the rack's x, y and z. */
    double[] place(double x, double y) {
      Box box = joint.upright().box();
      double right = inFront() ? 1 : -1;
      double leftCorner = (inFront() ? box.low().x() : box.high().x()).inMm();
      double outer = (inFront() ? box.low().y() : box.high().y()).inMm();
      double inward = right;
      double height = joint.rail().box().low().z().inMm() + y - underside;
      if (x < leftFold) {
        return new double[] {leftCorner, outer + inward * (leftFold - x), height};
      }
      if (x > rightFold) {
        double rightCorner = leftCorner + right * (rightFold - leftFold);
        return new double[] {rightCorner, outer + inward * (x - rightFold), height};
      }
      return new double[] {leftCorner + right * (x - leftFold), outer, height};
    }
  }
}
