package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;

/**
 * A square to measure both ways and across its corners, with what to do when it measures otherwise
 * written in it: 50 mm, or 2 in where the maker measures in inches.
 */
record CheckSquare(Unit units) {

  /** The side of the larger one. */
  static final double MOST_MM = Length.inches(2, 1).inMm();

  private static final double PAD = 2.5;
  private static final double HEIGHT = 2;

  Length side() {
    return units.metricOrInch(Length.mm(50), Length.inches(2, 1));
  }

  /** Drawn from its lower left corner; the square itself first. */
  List<Figure> figures() {
    double side = side().inMm();
    List<Figure> figures = new ArrayList<>();
    figures.add(Strokes.box(0, 0, side, side, LineKind.THIN));
    double top = side - PAD;
    for (String words : words()) {
      List<String> lines = Paragraph.wrap(words, HEIGHT, side - 2 * PAD);
      figures.addAll(Paragraph.draw(lines, PAD, top, HEIGHT));
      top -= Paragraph.heightOf(lines.size(), HEIGHT) + 1.5;
    }
    return figures;
  }

  /** 50 mm are 1.9685 in, 1 31/32 within 0.006 mm; its diagonal is 70.71 mm, that of 2 in 2.828. */
  private List<String> words() {
    String square =
        units == Unit.MM
            ? "50 mm (1 31/32\") ± 0.25 mm each way, 70.7 mm across the corners."
            : "2\" (50.8 mm) ± 1/64\" each way, 2 53/64\" across the corners.";
    return List.of(
        "Measure this square: " + square,
        "Measure both rules: 150 mm, or 6\", each.",
        "If they measure otherwise, the printer has scaled the page. Print again at 100 %; if that"
            + " does not help, give what "
            + units.metricOrInch("150 mm", "6\"")
            + " measured, across and up, to the export's printed-length option.");
  }
}
