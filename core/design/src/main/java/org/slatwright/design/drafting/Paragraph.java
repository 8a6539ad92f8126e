package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.PaperPoint;

/** Lettering that must stay within a width. */
public final class Paragraph {

  /** Line spacing over capital height (ISO 3098: at least 1.4 for lower case with descenders). */
  public static final double LINE_SPACING = 1.7;

  private static final String ELLIPSIS = "…";

  /** Between words, but not between a number and its fraction or its unit, or feet and inches. */
  private static final Pattern BREAK =
      Pattern.compile("(?<!\\d')\\s+(?!\\d+/\\d|(mm|g|kg|oz|lb|lbf|N|kN|MPa|psi|dB)\\b|%)");

  private Paragraph() {}

  /** The lines that {@code text} breaks into, at spaces, or within a word that is too long. */
  public static List<String> wrap(String text, double height, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : BREAK.split(text.strip())) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (Lettering.width(longer, height) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (Lettering.width(line, height) > width) {
        String head = longestHead(line, height, width);
        lines.add(head);
        line = line.substring(head.length());
      }
    }
    lines.add(line);
    return lines;
  }

  /** {@code text} on one line, cut short with an ellipsis where it is too long. */
  public static String cut(String text, double height, double width) {
    if (Lettering.width(text, height) <= width) {
      return text;
    }
    return longestHead(text, height, width - Lettering.width(ELLIPSIS, height)) + ELLIPSIS;
  }

  /** Wrapped to at most {@code most} lines, the last one cut short where there is more. */
  public static List<String> wrap(String text, double height, double width, int most) {
    List<String> lines = wrap(text, height, width);
    if (lines.size() <= most) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, most - 1));
    kept.add(cut(String.join(" ", lines.subList(most - 1, lines.size())), height, width));
    return kept;
  }

  /** Lines one below the other, the first one's capitals ending at {@code top}. */
  public static List<Figure> draw(List<String> lines, double left, double top, double height) {
    return draw(lines, left, top, height, Figure.Align.START);
  }

  /** The same, starting or ending at {@code x}. */
  public static List<Figure> draw(
      List<String> lines, double x, double top, double height, Figure.Align align) {
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double baseline = top - height - i * height * LINE_SPACING;
      figures.add(text(x, baseline, height, lines.get(i), align));
    }
    return figures;
  }

  /** How high that many lines are, from the top of the capitals to the foot of the last line. */
  public static double heightOf(int lines, double height) {
    return (lines - 1) * height * LINE_SPACING + height * 1.35;
  }

  /** One level line of lettering. */
  public static Figure text(double x, double y, double height, String text, Figure.Align align) {
    return new Figure.Text(new PaperPoint(x, y), height, text, align, 0);
  }

  /** As many whole characters as fit, at least one. */
  private static String longestHead(String text, double height, double width) {
    int end = text.offsetByCodePoints(0, 1);
    while (end < text.length()) {
      int next = text.offsetByCodePoints(end, 1);
      if (Lettering.width(text.substring(0, next), height) > width) {
        break;
      }
      end = next;
    }
    return text.substring(0, end);
  }
}
