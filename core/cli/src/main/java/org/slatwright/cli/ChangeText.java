package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.slatwright.design.rackfile.Problem;

/** Spells the changes that would put a problem right, ready to paste. */
final class ChangeText {

  private static final String INDENT = "    ";
  private static final String BELOW = "        ";

  /** A longer one has its meaning below it, so that the others have theirs on one line. */
  private static final int WIDEST_SETTING = 34;

  private ChangeText() {}

  /**
   * All of them under a heading, folded at the width of a terminal; a setting stays whole.
   *
   * @param spelled a setting as the maker gives it
   */
  static List<String> of(List<Problem.Change> changes, UnaryOperator<String> spelled) {
    if (changes.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add(changes.size() == 1 ? "  This puts it right:" : "  Any one of these puts it right:");
    List<String> settings =
        changes.stream().map(change -> spelled.apply(change.setting())).toList();
    int width =
        settings.stream()
            .mapToInt(String::length)
            .filter(length -> length <= WIDEST_SETTING)
            .max()
            .orElse(0);
    for (int i = 0; i < changes.size(); i++) {
      lines.addAll(change(settings.get(i), width, changes.get(i).words()));
    }
    return lines;
  }

  private static List<String> change(String setting, int width, String words) {
    List<String> lines = new ArrayList<>();
    if (setting.length() > width) {
      lines.add(INDENT + setting);
      lines.addAll(Folding.lines(BELOW, BELOW, words));
    } else {
      String head = INDENT + setting + " ".repeat(width - setting.length()) + "   ";
      lines.addAll(Folding.lines(head, " ".repeat(head.length()), words));
    }
    return lines;
  }
}
