package org.slatwright.cli;

import java.util.List;
import java.util.StringJoiner;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.Problem;

/**
 * Spells problems for a terminal: {@code file:line:column: error: message}, folded at its width,
 * the line of the file with a caret, and the changes that would help, ready to paste.
 */
final class ProblemText {

  private static final String INDENT = "    ";
  private static final int LONGEST_LINE = 100;
  private static final int BEFORE_CARET = 60;

  private final String source;
  private final List<String> lines;

  /**
   * For problems of one file.
   *
   * @param source its name, as in {@link Place#source}
   */
  ProblemText(String source, List<String> lines) {
    this.source = source;
    this.lines = List.copyOf(lines);
  }

  /** All of them, with no line end after the last. */
  String of(List<Problem> problems) {
    StringJoiner text = new StringJoiner("\n");
    problems.forEach(problem -> text.add(of(problem)));
    return text.toString();
  }

  private String of(Problem problem) {
    StringJoiner text = new StringJoiner("\n");
    Folding.lines(problem.place() + ": error: ", INDENT, problem.message()).forEach(text::add);
    addLine(problem.place(), text);
    ChangeText.of(problem.changes(), setting -> "--set " + quoted(setting)).forEach(text::add);
    return text.toString();
  }

  private void addLine(Place place, StringJoiner text) {
    boolean shown =
        place.source().equals(source) && place.line() >= 1 && place.line() <= lines.size();
    if (!shown) {
      return;
    }
    // A tab is one character wide here, so that the caret stays under its column.
    String line = lines.get(place.line() - 1).replace('\t', ' ');
    int[] points = line.codePoints().toArray();
    int column = Math.min(place.column(), points.length + 1);
    int from = points.length <= LONGEST_LINE ? 0 : Math.max(0, column - 1 - BEFORE_CARET);
    int length = Math.min(points.length - from, LONGEST_LINE);
    String window = new String(points, from, length).stripTrailing();
    if (!window.isBlank()) {
      text.add(INDENT + window);
      text.add(INDENT + " ".repeat(column - 1 - from) + "^");
    }
  }

  /** As a shell takes it. */
  private static String quoted(String setting) {
    return setting.matches("[A-Za-z0-9._=/+-]+")
        ? setting
        : "'" + setting.replace("'", "'\\''") + "'";
  }
}
