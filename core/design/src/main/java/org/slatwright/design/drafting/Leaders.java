package org.slatwright.design.drafting;

import java.util.List;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/** Leader lines (ISO 128-2). */
final class Leaders {

  private static final double DOT = 0.5;

  private Leaders() {}

  /** A line that ends in a dot, as one does on the face of a part. */
  static List<Figure> dotted(double x1, double y1, double x2, double y2) {
    return dotted(List.of(new PaperPoint(x1, y1), new PaperPoint(x2, y2)));
  }

  /** The same with bends. */
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
