package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.model.Fastener;

/**
 * A brad or screw from the side. The rack file says nothing of heads and points: a countersunk head
 * twice as wide as the shank, a brad's half as wide again (common practice, no source).
 */
final class FastenerSketch {

  private static final double POINT = 1.5;
  private static final double AXIS_BEYOND = 1.5;

  /** Thinner on paper it is one line. */
  private static final double THINNEST = 1;

  private FastenerSketch() {}

  /**
   * Driven in from above; a visible one covers the hatching of the wood around it.
   *
   * @param x of its axis, in mm on the sheet
   * @param head the height of its head
   * @param tip the height of its point
   * @param diameter of the shank on paper
   */
  static List<Figure> figures(
      Fastener.Kind kind, double x, double head, double tip, double diameter, LineKind line) {
    if (diameter < THINNEST) {
      return List.of(
          Strokes.line(x, tip, x, head, line), Strokes.line(x - 1, head, x + 1, head, line));
    }
    double half = diameter / 2;
    double wide = kind == Fastener.Kind.SCREW ? diameter : 0.75 * diameter;
    double neck = kind == Fastener.Kind.SCREW ? head - half : head - half / 2;
    double point = tip + POINT * diameter;
    List<PaperPoint> outline =
        List.of(
            new PaperPoint(x - wide, head),
            new PaperPoint(x - half, neck),
            new PaperPoint(x - half, point),
            new PaperPoint(x, tip),
            new PaperPoint(x + half, point),
            new PaperPoint(x + half, neck),
            new PaperPoint(x + wide, head));
    List<Figure> figures = new ArrayList<>();
    if (line == LineKind.VISIBLE) {
      figures.add(new Figure.Fill(outline, Figure.Shade.PAPER));
    }
    figures.add(new Figure.Polyline(outline, true, line));
    figures.add(Strokes.line(x, tip - AXIS_BEYOND, x, head + AXIS_BEYOND, LineKind.CENTRE));
    return figures;
  }
}
