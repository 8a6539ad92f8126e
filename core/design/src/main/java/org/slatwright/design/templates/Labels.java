package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Spread;
import org.slatwright.design.drafting.Strokes;

/**
 * Texts beside the edge of a face, below one another with a leader each: every one at the height
 * that it speaks of, or as near to it as the others let it be.
 *
 * @param marks from the lowest up
 */
record Labels(List<Mark> marks) {

  /** Least height of lettering on a template, in mm (ISO 3098). */
  static final double LETTERING = 2.5;

  private static final double PITCH = 4;
  private static final double LEVEL = 1;
  private static final double LEADER = 6;
  private static final double GAP = 0.8;
  private static final double EDGE = 1.2;

  /** Which side of the face they stand at. */
  enum Side {
    LEFT(-1, Figure.Align.END),
    RIGHT(1, Figure.Align.START);

    private final int away;
    private final Figure.Align align;

    Side(int away, Figure.Align align) {
      this.away = away;
      this.align = align;
    }
  }

  Labels {
    marks = marks.stream().sorted(Comparator.comparing(Mark::at)).toList();
  }

  /** How far they reach from the edge, in mm. */
  double width() {
    return marks.stream()
        .mapToDouble(mark -> LEADER + GAP + Lettering.width(mark.text(), LETTERING) + EDGE)
        .max()
        .orElse(0);
  }

  /** From the middle of the lowest to the middle of the highest when they stand close, in mm. */
  double height() {
    return Spread.height(marks.size(), PITCH);
  }

  /**
   * Drawn beside an upright edge at {@code x}.
   *
   * @param bottom the height of the face's lower end
   * @param low the middle of no label lies below it
   * @param high nor above it, where {@link #height} has room below
   */
  List<Figure> figures(Side side, double x, double bottom, double low, double high) {
    double[] heights = heights(bottom, low, high);
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      double at = bottom + marks.get(i).at().inMm();
      double start = x + side.away * LEVEL;
      double end = x + side.away * LEADER;
      figures.add(Strokes.line(x, at, start, at, LineKind.THIN));
      figures.add(Strokes.line(start, at, end, heights[i], LineKind.THIN));
      figures.add(
          Paragraph.text(
              end + side.away * GAP,
              heights[i] - LETTERING / 2,
              LETTERING,
              marks.get(i).text(),
              side.align));
    }
    return figures;
  }

  private double[] heights(double bottom, double low, double high) {
    double[] wanted = marks.stream().mapToDouble(mark -> bottom + mark.at().inMm()).toArray();
    return Spread.places(wanted, PITCH, low, high);
  }
}
