package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;

/**
 * How high things of a joint lie on the paper, alike in both sections: the upright is cut off a
 * little below the rail and above the slats, unless it ends there.
 *
 * @param bottom where the picture of the upright ends at the lowest, in mm on paper
 */
record JointHeights(JointShown joint, Scale scale, double bottom) {

  private static final double BEYOND = 13;

  double onPaper(Length length) {
    return length.inMm() * scale.factor();
  }

  double y(Length z) {
    return bottom + BEYOND + onPaper(z.minus(joint.rail().low().z()));
  }

  /** From the lowest place to the highest, on paper. */
  double height() {
    return top() - bottom;
  }

  double top() {
    return y(slatTop()) + BEYOND;
  }

  double underside() {
    return y(joint.rail().low().z());
  }

  double railTop() {
    return y(joint.rail().high().z());
  }

  Length slatTop() {
    return joint.slats().get(0).box().high().z();
  }

  double uprightFoot() {
    return Math.max(bottom, y(joint.upright().low().z()));
  }

  double uprightHead() {
    return Math.min(top(), y(joint.upright().high().z()));
  }

  /** The ends of the upright between two places across. */
  List<Figure> uprightEnds(double left, double right) {
    List<Figure> figures = new ArrayList<>();
    boolean runsDown = y(joint.upright().low().z()) < bottom;
    boolean runsUp = y(joint.upright().high().z()) > top();
    figures.add(
        runsDown
            ? BreakLine.level(uprightFoot(), left, right)
            : Strokes.line(left, uprightFoot(), right, uprightFoot(), LineKind.VISIBLE));
    figures.add(
        runsUp
            ? BreakLine.level(uprightHead(), left, right)
            : Strokes.line(left, uprightHead(), right, uprightHead(), LineKind.VISIBLE));
    return figures;
  }
}
