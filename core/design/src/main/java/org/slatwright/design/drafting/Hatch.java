package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;

/** Hatching at 45° (ISO 128-3), each line ending on the edge of its box. */
final class Hatch {

  private static final double LEAST = 0.05;

  private Hatch() {}

  /** Lines that rise to the right, {@code pitch} mm apart along the edge. */
  static List<Figure> rising(PaperBox box, double pitch) {
    List<Figure> lines = new ArrayList<>();
    double last = box.right() - box.bottom();
    for (double c = first(box.left() - box.top(), pitch); c < last; c += pitch) {
      double from = Math.max(box.left(), box.bottom() + c);
      double to = Math.min(box.right(), box.top() + c);
      if (to - from > LEAST) {
        lines.add(Strokes.line(from, from - c, to, to - c, LineKind.THIN));
      }
    }
    return lines;
  }

  /** Lines that fall to the right. */
  static List<Figure> falling(PaperBox box, double pitch) {
    List<Figure> lines = new ArrayList<>();
    double last = box.right() + box.top();
    for (double c = first(box.left() + box.bottom(), pitch); c < last; c += pitch) {
      double from = Math.max(box.left(), c - box.top());
      double to = Math.min(box.right(), c - box.bottom());
      if (to - from > LEAST) {
        lines.add(Strokes.line(from, c - from, to, c - to, LineKind.THIN));
      }
    }
    return lines;
  }

  private static double first(double least, double pitch) {
    return Math.ceil(least / pitch) * pitch;
  }
}
