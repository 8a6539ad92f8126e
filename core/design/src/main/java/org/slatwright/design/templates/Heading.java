package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.design.drafting.Paragraph;

/**
 * What a template says of itself: its title, then lines of their own.
 *
 * @param width that it keeps within, in mm
 */
record Heading(String title, List<String> lines, double width) {

  private static final double TITLE = 3.5;
  private static final double PAD = 2;

  Heading {
    lines = List.copyOf(lines);
  }

  /** With air above and below, in mm. */
  double height() {
    return PAD
        + Paragraph.heightOf(titleLines().size(), TITLE)
        + PAD / 2
        + Paragraph.heightOf(textLines().size(), Labels.LETTERING)
        + PAD;
  }

  /** Drawn with its upper left corner there. */
  List<Figure> figures(double left, double top) {
    double below = top - PAD - Paragraph.heightOf(titleLines().size(), TITLE) - PAD / 2;
    List<Figure> figures =
        new ArrayList<>(Paragraph.draw(titleLines(), left + PAD, top - PAD, TITLE));
    figures.addAll(Paragraph.draw(textLines(), left + PAD, below, Labels.LETTERING));
    return figures;
  }

  private List<String> titleLines() {
    return Paragraph.wrap(title, TITLE, room());
  }

  private List<String> textLines() {
    return lines.stream()
        .flatMap(line -> Paragraph.wrap(line, Labels.LETTERING, room()).stream())
        .toList();
  }

  private double room() {
    return width - 2 * PAD;
  }
}
