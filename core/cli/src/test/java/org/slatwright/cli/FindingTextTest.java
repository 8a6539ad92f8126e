package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;

class FindingTextTest {

  private static final String LONG = "as many words as it takes to run over the edge of a screen ";

  @Test
  void aFindingSaysWhereWhatHowMuchAndBelowItWhatToDo() {
    Finding finding =
        finding(Severity.WARNING, "it bends", "3 mm", "at most 2 mm", "make it thicker", "a table");
    assertEquals(
        List.of(
            "warning: slat S: it bends: 3 mm, at most 2 mm", "  make it thicker", "  [a table]"),
        FindingText.of(List.of(finding)));
  }

  @Test
  void whatIsNotKnownIsLeftOut() {
    assertEquals(
        List.of("note: slat S: it is there"),
        FindingText.of(List.of(finding(Severity.NOTE, "it is there", "", "", "", ""))));
  }

  @Test
  void aBlankLineStandsBetweenSeveritiesAlone() {
    Finding note = finding(Severity.NOTE, "n", "", "", "", "");
    Finding error = finding(Severity.ERROR, "e", "", "", "", "");
    assertEquals(
        List.of("error: slat S: e", "", "note: slat S: n", "note: slat S: n"),
        FindingText.of(List.of(error, note, note)));
  }

  @Test
  void onlyAFirstLineBeginsAtTheEdgeAndNoneIsWiderThanATerminal() {
    Finding wordy =
        finding(Severity.ERROR, LONG.repeat(3).strip(), "1 mm", "", LONG.repeat(2).strip(), "x");
    List<String> lines = FindingText.of(List.of(wordy));
    assertTrue(lines.get(0).startsWith("error: slat S: as many"), lines::toString);
    lines.stream().skip(1).forEach(line -> assertTrue(line.startsWith("  "), line));
    lines.forEach(line -> assertTrue(line.length() <= 80, line));
    assertEquals(
        "error: slat S: " + LONG.repeat(3).strip() + ": 1 mm " + LONG.repeat(2) + "[x]",
        String.join(" ", lines).replaceAll(" +", " "));
  }

  @Test
  void aNumberStaysWithItsUnit() {
    for (int length = 40; length < 70; length++) {
      Finding finding = finding(Severity.NOTE, "x".repeat(length), "17 N", "at least 89 N", "", "");
      String text = String.join("\n", FindingText.of(List.of(finding)));
      assertTrue(text.contains(" 17 N,") && text.contains(" at least 89 N"), text);
    }
  }

  @Test
  void everyExampleFitsATerminal() {
    for (Plan plan : SamplePlans.examples()) {
      FindingText.of(plan.findings()).forEach(line -> assertTrue(line.length() <= 80, line));
      QuantityText.of(plan).forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }

  private static Finding finding(
      Severity severity, String message, String value, String limit, String advice, String source) {
    return new Finding(severity, "rule", "slat S", message, value, limit, advice, source);
  }
}
