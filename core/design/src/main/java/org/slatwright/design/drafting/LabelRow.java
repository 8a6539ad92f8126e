package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;

/**
 * What is written along a bar of the parts that are too small to be lettered: beside each other
 * with a leader each, or, where there are too many, as one text from the left.
 *
 * @param labels from the left
 * @param room in mm, from the bar's left end
 */
record LabelRow(Side side, List<Label> labels, double room) {

  private static final double LETTERING = 2.5;
  private static final double LEADER = 3.6;
  private static final double BRACKET = 0.9;
  private static final double AIR = 0.8;
  private static final double BETWEEN = 2;

  /** Where the texts are. */
  enum Side {
    ABOVE("Above, from the left: "),
    /** Below the bar, of what no leader reaches without crossing something else. */
    BETWEEN("Between others, from the left: "),
    BELOW("From the left: ");

    private final String words;

    Side(String words) {
      this.words = words;
    }
  }

  /**
   * A text and what it is said of.
   *
   * @param from where that begins, in mm from the bar's left end
   * @param depth where a leader ends, in mm from the bar's edge; zero for a bracket along the edge
   */
  record Label(double from, double to, double depth, String text) {

    double middle() {
      return (from + to) / 2;
    }

    double width() {
      return Lettering.width(text, LETTERING);
    }
  }

  LabelRow {
    labels = List.copyOf(labels);
  }

  double height() {
    if (labels.isEmpty()) {
      return 0;
    }
    return hasLeaders()
        ? LEADER + Paragraph.heightOf(1, LETTERING)
        : 1 + Paragraph.heightOf(paragraph().size(), LETTERING);
  }

  /** With its upper left corner there. */
  List<Figure> figures(double left, double top) {
    if (labels.isEmpty()) {
      return List.of();
    }
    if (!hasLeaders()) {
      return Paragraph.draw(paragraph(), left, top - 1, LETTERING);
    }
    Edge edge = side == Side.ABOVE ? new Edge(top - height(), 1) : new Edge(top, -1);
    double baseline = side == Side.ABOVE ? edge.out(LEADER) : edge.out(LEADER + LETTERING);
    List<Figure> figures = new ArrayList<>();
    double[] starts = starts();
    for (int i = 0; i < labels.size(); i++) {
      Label label = labels.get(i);
      double x = left + starts[i];
      figures.addAll(pointer(label, left, edge, x));
      figures.add(Paragraph.text(x, baseline, LETTERING, label.text(), Figure.Align.START));
    }
    return figures;
  }

  /**
   * The edge of the bar that the texts are along.
   *
   * @param outward 1 where they are above
   */
  private record Edge(double y, int outward) {

    double out(double distance) {
      return y + outward * distance;
    }
  }

  /** Straight from the text where that reaches so far; crossing nothing where it bends. */
  private static List<Figure> pointer(Label label, double left, Edge edge, double text) {
    double x = left + label.middle();
    double last = text + label.width() - AIR;
    PaperPoint start =
        new PaperPoint(
            Math.max(Math.min(x, last), Math.min(text + AIR, last)), edge.out(LEADER - AIR));
    PaperPoint bend = new PaperPoint(x, edge.out(BRACKET));
    if (label.depth() > 0) {
      return Leaders.dotted(List.of(start, bend, new PaperPoint(x, edge.out(-label.depth()))));
    }
    double from = left + label.from() + 0.2;
    double to = left + label.to() - 0.2;
    double level = edge.out(BRACKET);
    double tip = edge.out(BRACKET - 0.6);
    return List.of(
        Strokes.line(from, level, to, level, LineKind.THIN),
        Strokes.line(from, level, from, tip, LineKind.THIN),
        Strokes.line(to, level, to, tip, LineKind.THIN),
        Figure.Polyline.line(start, bend, LineKind.THIN));
  }

  private boolean hasLeaders() {
    double width = labels.stream().mapToDouble(Label::width).sum();
    return side != Side.BETWEEN && width + (labels.size() - 1) * BETWEEN <= room;
  }

  private List<String> paragraph() {
    String all = labels.stream().map(Label::text).collect(Collectors.joining(", "));
    return Paragraph.wrap(side.words + all, LETTERING, room);
  }

  /** As near to what each is said of as the others and the room let it be. */
  private double[] starts() {
    double[] starts = new double[labels.size()];
    double free = 0;
    for (int i = 0; i < starts.length; i++) {
      Label label = labels.get(i);
      starts[i] = Math.max(free, label.middle() - label.width() / 2);
      free = starts[i] + label.width() + BETWEEN;
    }
    double end = room;
    for (int i = starts.length - 1; i >= 0; i--) {
      starts[i] = Math.min(starts[i], end - labels.get(i).width());
      end = starts[i] - BETWEEN;
    }
    return starts;
  }
}
