package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.plan.Finding;

/**
 * Spells findings for a terminal, in the order given. Each begins at the left edge with its
 * severity, so that it can be searched for; what to do and where the rule comes from stand below
 * it.
 */
final class FindingText {

  private static final String DETAIL = "  ";
  private static final String CONTINUED = "    ";

  private FindingText() {}

  /** All of them, a blank line between one severity and the next. */
  static List<String> of(List<Finding> findings) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      boolean milder = i > 0 && findings.get(i).severity() != findings.get(i - 1).severity();
      if (milder) {
        lines.add("");
      }
      lines.addAll(of(findings.get(i)));
    }
    return lines;
  }

  /** {@code slat S: bends under the load: 3.2 mm, at most 2.9 mm}, without the severity. */
  static String head(Finding finding) {
    String value = finding.value().isEmpty() ? "" : ": " + finding.value();
    String limit = finding.limit().isEmpty() ? "" : ", " + finding.limit();
    return finding.subject() + ": " + finding.message() + value + limit;
  }

  /** A number stays with its unit. */
  private static List<String> words(Finding finding) {
    boolean limited = !finding.limit().isEmpty();
    String head = finding.severity().word() + ": " + finding.subject() + ": " + finding.message();
    String mark = finding.value().isEmpty() ? (limited ? "," : "") : ":";
    List<String> words = new ArrayList<>(Folding.words(head + mark));
    if (!finding.value().isEmpty()) {
      words.add(finding.value() + (limited ? "," : ""));
    }
    if (limited) {
      words.add(finding.limit());
    }
    return words;
  }

  private static List<String> of(Finding finding) {
    List<String> lines = new ArrayList<>(Folding.lines("", CONTINUED, words(finding)));
    if (!finding.advice().isEmpty()) {
      lines.addAll(Folding.lines(DETAIL, CONTINUED, finding.advice()));
    }
    if (!finding.source().isEmpty()) {
      lines.addAll(Folding.lines(DETAIL, CONTINUED, "[" + finding.source() + "]"));
    }
    return lines;
  }
}
