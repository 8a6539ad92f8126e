package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;

/**
 * A rule to hold a steel rule against: millimetres on its upper side, inches on its lower. The
 * tolerance is half a millimetre either way, as closely as a maker reads a steel rule (common
 * practice, no source).
 *
 * @param millimetres how many, in tens
 * @param inches how many
 */
record CheckRule(int millimetres, int inches) {

  static final CheckRule LONG = new CheckRule(150, 6);
  static final CheckRule SHORT = new CheckRule(100, 4);

  /** Across, both scales with their numbers. */
  static final double THICKNESS_MM = 11.9;

  private static final double INCH = Length.inches(1, 1).inMm();
  private static final int EIGHTHS = 8;
  private static final double MIDDLE = 6.2;
  private static final double HEIGHT = 2;
  private static final double LONGEST_TICK = 3;
  private static final double AIR = 0.6;

  /** Before the zero, so that its number has room. */
  private static final double LEAD = 1;

  private static final double TO_WORDS = 3;
  private static final double WORDS = 16;

  /** From end to end with all its words, in mm. */
  double overallMm() {
    return LEAD + inches * INCH + TO_WORDS + WORDS;
  }

  /** Drawn to the right from its lower left corner. */
  List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    figures.add(Strokes.line(LEAD, MIDDLE, LEAD + inches * INCH, MIDDLE, LineKind.THIN));
    for (int i = 0; i <= millimetres; i++) {
      figures.add(tick(i, i % 10 == 0 ? LONGEST_TICK : i % 5 == 0 ? 2.2 : 1.5));
    }
    for (int i = 0; i <= inches * EIGHTHS; i++) {
      double length = i % EIGHTHS == 0 ? LONGEST_TICK : i % 4 == 0 ? 2.2 : i % 2 == 0 ? 1.8 : 1.3;
      figures.add(tick(i * INCH / EIGHTHS, -length));
    }
    for (int i = 0; i <= millimetres; i += 10) {
      figures.add(number(i, i, upper()));
    }
    for (int i = 0; i <= inches; i++) {
      figures.add(number(i, i * INCH, lower()));
    }
    double words = LEAD + inches * INCH + TO_WORDS;
    figures.add(words(words, upper(), millimetres + " ± 0.5 mm"));
    figures.add(words(words, lower(), inches + " ± 1/64\""));
    return figures;
  }

  private static double upper() {
    return MIDDLE + LONGEST_TICK + AIR;
  }

  private static double lower() {
    return MIDDLE - LONGEST_TICK - AIR - HEIGHT;
  }

  private static Figure tick(double at, double length) {
    return Strokes.line(LEAD + at, MIDDLE, LEAD + at, MIDDLE + length, LineKind.THIN);
  }

  private static Figure number(int number, double at, double baseline) {
    String digits = Integer.toString(number);
    return Paragraph.text(LEAD + at, baseline, HEIGHT, digits, Figure.Align.MIDDLE);
  }

  private static Figure words(double left, double baseline, String words) {
    return Paragraph.text(left, baseline, HEIGHT, words, Figure.Align.START);
  }
}
