package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;

/**
 * A rule of 150 mm and 6 in to hold a steel rule against: millimetres on its upper side, inches on
 * its lower. The tolerance is half a millimetre either way, as closely as a maker reads a steel
 * rule (common practice, no source).
 */
final class CheckRule {

  /** Across, both scales with their numbers. */
  static final double THICKNESS_MM = 11.9;

  private static final int MILLIMETRES = lengthIn(Unit.MM);
  private static final int INCHES = lengthIn(Unit.INCH);
  private static final double INCH = Length.inches(1, 1).inMm();
  private static final int EIGHTHS = 8;
  private static final double MIDDLE = 6.2;
  private static final double HEIGHT = 2;
  private static final double LONGEST_TICK = 3;
  private static final double AIR = 0.6;

  /** Before the zero, so that its number has room. */
  private static final double LEAD = 1;

  private CheckRule() {}

  private static int lengthIn(Unit unit) {
    return Math.toIntExact(Templates.checkRule(unit).wholeTimes(new Length(unit.nanometres())));
  }

  /** Drawn to the right from its lower left corner. */
  static List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    figures.add(Strokes.line(LEAD, MIDDLE, LEAD + INCHES * INCH, MIDDLE, LineKind.THIN));
    for (int i = 0; i <= MILLIMETRES; i++) {
      figures.add(tick(i, LONGEST_TICK - (i % 5 == 0 ? 0 : 0.7) - (i % 10 == 0 ? 0 : 0.8)));
    }
    for (int i = 0; i <= INCHES * EIGHTHS; i++) {
      int halvings = Math.min(Integer.numberOfTrailingZeros(i), 3);
      figures.add(tick(i * INCH / EIGHTHS, -LONGEST_TICK + 0.6 * (3 - halvings)));
    }
    for (int i = 0; i <= MILLIMETRES; i += 10) {
      figures.add(number(i, i, upper()));
    }
    for (int i = 0; i <= INCHES; i++) {
      figures.add(number(i, i * INCH, lower()));
    }
    figures.add(words(0.5, MILLIMETRES + " ± 0.5 mm"));
    figures.add(words(1.5, INCHES + " ± 1/64\""));
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

  /** Between two numbers of the lower side. */
  private static Figure words(double inch, String words) {
    return Paragraph.text(LEAD + inch * INCH, lower(), HEIGHT, words, Figure.Align.MIDDLE);
  }
}
