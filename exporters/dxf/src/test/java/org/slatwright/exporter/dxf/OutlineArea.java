package org.slatwright.exporter.dxf;

import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/** The area that an outline of the model encloses, without the detour by bulges. */
final class OutlineArea {

  private OutlineArea() {}

  /**
   * In mm²: the surveyor's (Gauss) area formula, and for each arc the segment between it and its
   * chord.
   */
  static double mm2(Outline outline) {
    if (outline instanceof Outline.Circle circle) {
      double radius = circle.diameter().inMm() / 2;
      return Math.PI * radius * radius;
    }
    return ((Outline.Path) outline).edges().stream().mapToDouble(OutlineArea::mm2).sum();
  }

  private static double mm2(Outline.Edge edge) {
    double chord = (x(edge.from()) * y(edge.to()) - x(edge.to()) * y(edge.from())) / 2;
    if (edge instanceof Outline.Arc arc) {
      double radius = arc.radiusMm();
      double turn = arc.sweep();
      return chord + radius * radius * (turn - Math.sin(turn)) / 2;
    }
    return chord;
  }

  private static double x(Point2 point) {
    return point.x().inMm();
  }

  private static double y(Point2 point) {
    return point.y().inMm();
  }
}
