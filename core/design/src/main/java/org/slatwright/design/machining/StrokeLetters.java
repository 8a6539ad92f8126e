package org.slatwright.design.machining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;

/**
 * Capitals, digits and the hyphen in straight single strokes, for a tool that draws a line. Drawn
 * for this project on a grid of 4 by 6.
 */
final class StrokeLetters {

  private static final int GRID_HEIGHT = 6;
  private static final int GRID_WIDTH = 4;

  /** From the left of one character to the left of the next. */
  private static final int PITCH = 6;

  /** Each stroke as the x and y of its points, strokes apart by a blank. */
  private static final Map<Character, String> STROKES =
      Map.ofEntries(
          Map.entry('A', "002640 1232"),
          Map.entry('B', "00063645443303 3342413000"),
          Map.entry('C', "4536160501103041"),
          Map.entry('D', "00062644422000"),
          Map.entry('E', "40000646 0333"),
          Map.entry('F', "000646 0333"),
          Map.entry('G', "45361605011030414323"),
          Map.entry('H', "0006 4046 0343"),
          Map.entry('I', "1030 2026 1636"),
          Map.entry('J', "0110304146"),
          Map.entry('K', "0006 460240"),
          Map.entry('L', "060040"),
          Map.entry('M', "0006234640"),
          Map.entry('N', "00064046"),
          Map.entry('O', "011030414536160501"),
          Map.entry('P', "00063645443303"),
          Map.entry('Q', "011030414536160501 2240"),
          Map.entry('R', "00063645443303 2340"),
          Map.entry('S', "011030414233130405163645"),
          Map.entry('T', "2026 0646"),
          Map.entry('U', "060110304146"),
          Map.entry('V', "062046"),
          Map.entry('W', "0610233046"),
          Map.entry('X', "0046 0640"),
          Map.entry('Y', "062346 2320"),
          Map.entry('Z', "06460040"),
          Map.entry('0', "011030414536160501 1135"),
          Map.entry('1', "1030 202614"),
          Map.entry('2', "0516364544010040"),
          Map.entry('3', "064623334241301001"),
          Map.entry('4', "30360242"),
          Map.entry('5', "4606033342413000"),
          Map.entry('6', "3616040110304142331302"),
          Map.entry('7', "064610"),
          Map.entry('8', "130405163645443313020110304142 3342"),
          Map.entry('9', "1030424536160504133344"),
          Map.entry('-', "1333"));

  private StrokeLetters() {}

  /** How wide a text is whose letters are {@code height} high. */
  static Length width(String text, Length height) {
    return units(height, PITCH * (text.length() - 1) + GRID_WIDTH);
  }

  /**
   * The strokes of a text.
   *
   * @param low the lower left corner of its first letter
   * @throws IllegalArgumentException for what is no capital, digit or hyphen
   */
  static List<Pattern.Stroke> of(String text, Point2 low, Length height) {
    List<Pattern.Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      Point2 corner = low.moved(units(height, PITCH * i), Length.ZERO);
      for (String stroke : strokes(text.charAt(i))) {
        strokes.add(new Pattern.Stroke(points(stroke, corner, height)));
      }
    }
    return strokes;
  }

  private static List<String> strokes(char letter) {
    String strokes = STROKES.get(letter);
    if (strokes == null) {
      throw new IllegalArgumentException("no strokes for '" + letter + "'");
    }
    return Arrays.asList(strokes.split(" "));
  }

  private static List<Point2> points(String stroke, Point2 corner, Length height) {
    List<Point2> points = new ArrayList<>();
    for (int i = 0; i < stroke.length(); i += 2) {
      points.add(
          corner.moved(
              units(height, stroke.charAt(i) - '0'), units(height, stroke.charAt(i + 1) - '0')));
    }
    return points;
  }

  private static Length units(Length height, int count) {
    return height.times(count).dividedBy(GRID_HEIGHT);
  }
}
