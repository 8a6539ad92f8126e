package org.slatwright.exporter.html;

import java.util.List;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Plan;

/** The cut list. */
final class Cuts {

  private Cuts() {}

  static Section of(Plan plan) {
    HtmlTable table =
        new HtmlTable(
            "Parts to cut: tick a part when all its pieces are cut",
            List.of(
                HtmlTable.Column.ticks(),
                HtmlTable.Column.words("Part"),
                HtmlTable.Column.numbers("Pieces"),
                HtmlTable.Column.lengths("Length"),
                HtmlTable.Column.lengths("Section")),
            1,
            plan.cutList().stream().map(Cuts::row).toList());
    return new Section(
        "cut-list", "Cut list", plan.cutList().isEmpty() ? List.of() : List.of(table.node()));
  }

  private static List<Node> row(CutLine line) {
    Part part = line.part();
    Shape shape = part.shape();
    return List.of(
        new Tick("cut-" + part.mark()).alone("Cut: " + part.mark() + ", " + part.name()),
        Element.of(
            "span", Element.of("b", part.mark()).styled("mark"), Node.text(" " + part.name())),
        Node.count(part.quantity()),
        Measures.number(shape.length()),
        section(shape),
        Element.of(
            "span",
            Element.of("span", line.timber()).styled("note"),
            Element.of("span", line.note()).styled("note")));
  }

  private static Node section(Shape shape) {
    return shape instanceof Shape.Rod rod
        ? Element.of("span", Node.text("ø "), Measures.number(rod.diameter())).styled("together")
        : Measures.numbers(shape.width(), shape.thickness());
  }
}
