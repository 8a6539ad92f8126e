package org.slatwright.exporter.pdf;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Lettering;

/**
 * A stretch of text whose characters the font either all has or all lacks.
 *
 * @param text at least one character
 * @param inFont whether it has them
 */
record Run(String text, boolean inFont) {

  /** The runs of a text, in order; each as long as can be. */
  static List<Run> of(String text) {
    List<Run> runs = new ArrayList<>();
    int start = 0;
    while (start < text.length()) {
      int end = end(text, start);
      runs.add(new Run(text.substring(start, end), Lettering.has(text.codePointAt(start))));
      start = end;
    }
    return runs;
  }

  private static int end(String text, int start) {
    boolean inFont = Lettering.has(text.codePointAt(start));
    int end = start;
    while (end < text.length() && Lettering.has(text.codePointAt(end)) == inFont) {
      end += Character.charCount(text.codePointAt(end));
    }
    return end;
  }
}
