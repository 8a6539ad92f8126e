package org.slatwright.exporter.figures;

import org.slatwright.api.drawing.PaperPoint;

/**
 * From the paper, where y runs up from the foot, to SVG, where it runs down from the head. Angles
 * turn over with it.
 *
 * @param heightMm of the paper
 */
record PaperFlip(double heightMm) {

  double x(PaperPoint point) {
    return micron(point.x());
  }

  double y(PaperPoint point) {
    return micron(heightMm - point.y());
  }

  /** Clockwise, as SVG turns, from counter-clockwise. */
  double turn(double degrees) {
    return micron(-degrees);
  }

  /** No printer is finer, and a rounded number is never -0. */
  private static double micron(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
