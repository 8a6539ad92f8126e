package org.slatwright.exporter.html;

import java.util.List;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.plan.Plan;

/** The holes to drill, where the drill goes in. */
final class Holes {

  private Holes() {}

  static Section of(Plan plan) {
    List<List<Node>> rows =
        plan.assembly().parts().stream()
            .flatMap(part -> part.holes().stream().map(hole -> row(part, hole)))
            .toList();
    HtmlTable table =
        new HtmlTable(
            "Holes of each part, to their centres",
            List.of(
                HtmlTable.Column.words("Hole"),
                HtmlTable.Column.words("Goes in at"),
                HtmlTable.Column.lengths("Along"),
                HtmlTable.Column.lengths("Across"),
                HtmlTable.Column.lengths("ø"),
                HtmlTable.Column.lengths("Depth")),
            0,
            rows);
    return new Section(
        "holes", "Holes to drill", rows.isEmpty() ? List.of() : List.of(table.node()));
  }

  private static List<Node> row(Part part, Hole hole) {
    return List.of(
        Element.of(
            "span",
            Element.of("b", part.mark() + " " + hole.name()).styled("mark"),
            Element.of("span", part.name()).styled("note")),
        Node.text(hole.face().word()),
        from(hole.face().alongFrom(), Measures.number(hole.along())),
        from(hole.face().acrossFrom(), Measures.number(hole.across())),
        Measures.number(hole.diameter()),
        hole.through() ? Node.text("through") : Measures.number(hole.depth()));
  }

  private static Node from(Face face, Node distance) {
    return Element.of(
        "span", distance, Element.of("span", "from the " + face.word()).styled("note"));
  }
}
