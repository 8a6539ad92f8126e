package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;

/**
 * What is written below a bar of the pieces too short to be lettered: beside each other with a
 * leader each, or, where there are too many, as one text from the left.
 *
 * @param labels from the left
 * @param room in mm, from the bar's left end
 */
record LabelRow(List<Label> labels, double room) {

  private static final double LETTERING = 2.5;
  private static final double LEADER = 3;
  private static final double BRACKET = 0.9;
  private static final double BETWEEN = 2;

  /**
   * A text and what it is said of.
   *
   * @param from where that begins, in mm from the bar's left end
   * @param foot where a leader ends, in mm above the bar's foot; zero for a bracket below it
   */
  record Label(double from, double to, double foot, String text) {

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
    return fits()
        ? LEADER + Paragraph.heightOf(1, LETTERING)
        : 1 + Paragraph.heightOf(paragraph().size(), LETTERING);
  }

  /** Below a bar with its lower left corner there. */
  List<Figure> figures(double left, double bottom) {
    if (!fits()) {
      return Paragraph.draw(paragraph(), left, bottom - 1, LETTERING);
    }
    List<Figure> figures = new ArrayList<>();
    double[] starts = starts();
    for (int i = 0; i < labels.size(); i++) {
      Label label = labels.get(i);
      double x = left + starts[i];
      double middle = x + label.width() / 2;
      figures.addAll(pointer(label, left, bottom, middle));
      figures.add(
          Paragraph.text(
              x, bottom - LEADER - LETTERING, LETTERING, label.text(), Figure.Align.START));
    }
    return figures;
  }

  private static List<Figure> pointer(Label label, double left, double bottom, double middle) {
    double x = left + label.middle();
    double end = bottom - LEADER + 0.4;
    if (label.foot() > 0) {
      return Leaders.dotted(middle, end, x, bottom + label.foot());
    }
    double level = bottom - BRACKET;
    double from = left + label.from() + 0.2;
    double to = left + label.to() - 0.2;
    return List.of(
        Strokes.line(from, level, to, level, LineKind.THIN),
        Strokes.line(from, level, from, level + 0.6, LineKind.THIN),
        Strokes.line(to, level, to, level + 0.6, LineKind.THIN),
        Strokes.line(x, level, middle, end, LineKind.THIN));
  }

  private boolean fits() {
    double width = labels.stream().mapToDouble(Label::width).sum();
    return width + (labels.size() - 1) * BETWEEN <= room;
  }

  private List<String> paragraph() {
    String all = labels.stream().map(Label::text).collect(Collectors.joining(", "));
    return Paragraph.wrap("From the left: " + all, LETTERING, room);
  }

  /** As near below what each is said of as the others and the room let it be. */
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
