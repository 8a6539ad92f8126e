package org.slatwright.design.drafting;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** Leader lines (ISO 128-2). */
final class Leaders {

  private static final double DOT = 0.5;
  private static final double ARROW = 2.5;

  private Leaders() {}

  /** A line that ends in a dot, as one does on the face of a part. */
  static List<Figure> dotted(double x1, double y1, double x2, double y2) {
    return dotted(List.of(new PaperPoint(x1, y1), new PaperPoint(x2, y2)));
  }

  /** A level line that ends in an arrowhead, as one does on an edge. */
  static List<Figure> arrowed(double x1, double y, double x2) {
    double back = x2 + Math.signum(x1 - x2) * ARROW;
    return List.of(
        Strokes.line(x1, y, x2, y, LineKind.THIN),
        new Figure.Fill(
            List.of(
                new PaperPoint(x2, y),
                new PaperPoint(back, y + ARROW / 6),
                new PaperPoint(back, y - ARROW / 6)),
            Figure.Shade.INK));
  }

  /** A dotted one with bends. */
  static List<Figure> dotted(List<PaperPoint> points) {
    PaperPoint end = points.get(points.size() - 1);
    return List.of(
        new Figure.Polyline(points, false, LineKind.THIN),
        new Figure.Fill(
            IntStream.range(0, 8)
                .mapToObj(i -> i * Math.PI / 4)
                .map(turn -> end.moved(DOT * Math.cos(turn), DOT * Math.sin(turn)))
                .toList(),
            Figure.Shade.INK));
  }
}
