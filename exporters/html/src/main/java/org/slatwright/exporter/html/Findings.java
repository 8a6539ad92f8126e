package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.api.plan.Plan;

/** What was found: what must change, what can hurt, and what was checked and is well. */
final class Findings {

  private static final String CAUTION = "caution";

  private final Plan plan;

  private Findings(Plan plan) {
    this.plan = plan;
  }

  /** What must be known first. */
  static Section before(Plan plan) {
    Findings findings = new Findings(plan);
    List<Node> content = new ArrayList<>();
    content.addAll(findings.list("To change before building", Findings::isToChange));
    List<Node> cautions = findings.list("Cautions", Findings::isCaution);
    content.addAll(cautions.isEmpty() ? List.of(safety()) : cautions);
    return new Section("findings", "Before the first cut", content);
  }

  /** What is well, with its numbers. */
  static Section checked(Plan plan) {
    List<List<Node>> rows =
        plan.findings().stream()
            .filter(finding -> !isToChange(finding) && !isCaution(finding))
            .map(Findings::row)
            .toList();
    HtmlTable table =
        new HtmlTable(
            "Checked and found well, and what was taken where the maker left it open",
            List.of(
                HtmlTable.Column.words("What"),
                HtmlTable.Column.words("Reckoned"),
                HtmlTable.Column.words("Should be")),
            0,
            rows);
    return new Section(
        "checked", "Checked and noted", rows.isEmpty() ? List.of() : List.of(table.node()));
  }

  private static List<Node> row(Finding finding) {
    return List.of(
        Element.of(
            "span",
            Element.of("b", finding.subject()),
            Node.text(": " + finding.message()),
            Element.of("span", finding.advice()).styled("note"),
            Element.of("span", finding.source()).styled("note")),
        Node.text(finding.value()),
        Node.text(finding.limit()));
  }

  /** What holds for any plan, where the plan itself reminds of nothing. */
  private static Node safety() {
    return Element.of(
            "p",
            "Local codes and the advice of licensed trades come first. Protect eyes, ears and lungs,"
                + " keep hands clear of blades and bits, follow the manuals of your tools, and fix a"
                + " tall or top-heavy rack to the wall. If in doubt, stop and ask.")
        .styled("safety");
  }

  private static boolean isToChange(Finding finding) {
    return finding.severity() != Severity.NOTE;
  }

  private static boolean isCaution(Finding finding) {
    return finding.severity() == Severity.NOTE && finding.rule().equals(CAUTION);
  }

  private List<Node> list(String heading, Predicate<Finding> kind) {
    List<Element> items = plan.findings().stream().filter(kind).map(Findings::item).toList();
    return items.isEmpty()
        ? List.of()
        : List.of(Element.of("h3", heading), Element.of("ul", items).styled("findings"));
  }

  private static Element item(Finding finding) {
    List<Node> said = new ArrayList<>();
    if (finding.severity() != Severity.NOTE) {
      said.add(Element.of("strong", finding.severity().word()).styled("severity"));
      said.add(Node.text(" "));
    }
    said.add(Element.of("b", finding.subject()));
    said.add(Node.text(": " + finding.message() + numbers(finding)));
    if (!finding.advice().isEmpty()) {
      said.add(Element.of("p", finding.advice()).styled("advice"));
    }
    if (!finding.source().isEmpty()) {
      said.add(Element.of("p", finding.source()).styled("source"));
    }
    return Element.of("li", said).styled("finding-" + finding.severity().word());
  }

  private static String numbers(Finding finding) {
    String value = finding.value().isEmpty() ? "" : ": " + finding.value();
    String limit = finding.limit().isEmpty() ? "" : ", " + finding.limit();
    return value + limit;
  }
}
