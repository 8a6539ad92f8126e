package com.example.partslist;

import java.util.List;
import java.util.StringJoiner;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;

/** Says a plan in Markdown. Everything it says stands in the plan; it only chooses the words. */
final class PartsList {

  private final Plan plan;
  private final boolean tickBoxes;

  PartsList(Plan plan, boolean tickBoxes) {
    this.plan = plan;
    this.tickBoxes = tickBoxes;
  }

  /** The whole file. Markdown of CommonMark, with the table that most readers of it know. */
  String text() {
    StringJoiner text = new StringJoiner("\n", "", "\n");
    text.add("# " + Markdown.escaped(plan.title())).add("");
    addParts(text);
    addFindings(text);
    return text.toString();
  }

  private void addParts(StringJoiner text) {
    text.add(row(List.of("Mark", "Part", "Pieces", "Size", "From", "Note")));
    text.add("|---|---|--:|---|---|---|");
    for (CutLine line : plan.cutList()) {
      Part part = line.part();
      text.add(
          row(
              List.of(
                  Markdown.escaped(part.mark()),
                  Markdown.escaped(part.name()),
                  pieces(part.quantity()),
                  Markdown.escaped(size(part.shape())),
                  Markdown.escaped(line.timber()),
                  Markdown.escaped(line.note()))));
    }
  }

  private String pieces(int quantity) {
    return tickBoxes ? quantity + " " + "☐".repeat(quantity) : Integer.toString(quantity);
  }

  private String size(Shape shape) {
    LengthFormat lengths = plan.lengths();
    return lengths.withUnit(shape.length())
        + " of "
        + (shape instanceof Shape.Rod rod
            ? "ø " + lengths.withUnit(rod.diameter())
            : lengths.section(shape.thickness(), shape.width()));
  }

  private void addFindings(StringJoiner text) {
    if (plan.findings().isEmpty()) {
      return;
    }
    text.add("").add("## Before the first cut").add("");
    for (Finding finding : plan.findings()) {
      String advice =
          finding.advice().isEmpty() ? "" : " *" + Markdown.escaped(finding.advice()) + "*";
      text.add(
          "- **%s**, %s: %s%s"
              .formatted(
                  finding.severity().word(),
                  Markdown.escaped(finding.subject()),
                  Markdown.escaped(finding.message()),
                  advice));
    }
  }

  private static String row(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |";
  }
}
