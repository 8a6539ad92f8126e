package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.drafting.Table.Column;

/**
 * Findings as they stand on paper: what must change first, then the numbers that are well, then the
 * cautions.
 *
 * @param width of the sheet's room, mm
 */
record FindingsText(List<Finding> findings, double width) {

  private static final String CAUTION = "caution";
  private static final String NOTHING = "Nothing: no error and no warning was found.";
  private static final int LINES = 4;
  private static final int LINES_WITH_ADVICE = 8;
  private static final double BETWEEN = 3;

  FindingsText {
    findings = List.copyOf(findings);
  }

  /** From the top of the sheet down; empty ones too. */
  List<RunningText<?>> texts() {
    return List.of(
        new RunningText<>("to-change", "To change before building", toChange(), this::columns),
        new RunningText<>("checks", "Checked and noted", checked(), this::table),
        new RunningText<>("cautions", "Cautions", cautions(), this::columns));
  }

  private List<String> toChange() {
    List<String> texts =
        findings.stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .map(FindingsText::toChange)
            .toList();
    return texts.isEmpty() ? List.of(NOTHING) : texts;
  }

  private static String toChange(Finding finding) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        severity(finding.severity())
            + ", "
            + finding.subject()
            + ": "
            + finding.message()
            + (numbers(finding).isEmpty() ? "" : ": " + numbers(finding)));
    if (!finding.advice().isEmpty()) {
      sentences.add("Advice: " + finding.advice());
    }
    return withSource(String.join(". ", sentences) + ".", finding);
  }

  /** An error stands out from warnings. */
  private static String severity(Severity severity) {
    String word = severity.word();
    return severity == Severity.ERROR ? word.toUpperCase(Locale.ROOT) : capital(word);
  }

  private static String numbers(Finding finding) {
    String between = finding.value().isEmpty() || finding.limit().isEmpty() ? "" : ", ";
    return finding.value() + between + finding.limit();
  }

  private List<Finding> checked() {
    return findings.stream()
        .filter(finding -> finding.severity() == Severity.NOTE)
        .filter(finding -> !numbers(finding).isEmpty())
        .toList();
  }

  private List<String> cautions() {
    return findings.stream()
        .filter(finding -> finding.rule().equals(CAUTION))
        .map(finding -> withSource(capital(finding.subject()) + ": " + finding.message(), finding))
        .toList();
  }

  private static String withSource(String text, Finding finding) {
    return finding.source().isEmpty() ? text : text + " [" + finding.source() + "]";
  }

  private static String capital(String text) {
    int end = text.offsetByCodePoints(0, 1);
    return text.substring(0, end).toUpperCase(Locale.ROOT) + text.substring(end);
  }

  private TextBlock columns(String heading, List<String> paragraphs) {
    return new Columns(heading, paragraphs, width, BETWEEN);
  }

  private TextBlock table(String heading, List<Finding> checked) {
    return new HeadedTable(
        heading,
        new Table(
            List.of(
                new Column("Subject", width * 0.19, false, LINES),
                new Column("What", width * 0.45, false, LINES_WITH_ADVICE),
                new Column("Value", width * 0.15, true, LINES),
                new Column("Limit", width * 0.21, false, LINES)),
            checked.stream().map(FindingsText::row).toList()));
  }

  private static List<String> row(Finding finding) {
    String advice = finding.advice().isEmpty() ? "" : ". Advice: " + finding.advice();
    String missed = Margin.isMissed(finding) ? " (not met)" : "";
    return List.of(
        finding.subject(), finding.message() + advice, finding.value(), finding.limit() + missed);
  }
}
