package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;

/** Weight, finish, glue and counts. */
final class Amounts {

  private Amounts() {}

  static Section of(Plan plan) {
    Quantities all = plan.quantities();
    List<List<Node>> rows = new ArrayList<>();
    rows.add(row("Weight of the empty rack", Measures.inEither(all.mass()::withUnit)));
    rows.add(row("Its centre of gravity", centre(all.centreOfGravity())));
    for (Quantities.PartMass part : all.parts()) {
      String name = "One " + part.part().name() + " (" + part.part().mark() + ")";
      rows.add(row(name, Measures.inEither(part.each()::withUnit)));
    }
    rows.add(row("Area to finish", Measures.inEither(all.finishArea()::withUnit)));
    rows.add(row("Glue", Measures.inEither(all.glue()::withUnit)));
    rows.add(row("Dowels", Node.count(all.dowels())));
    rows.add(row("Dowel rod", Measures.length(all.dowelRod())));
    rows.add(row("Brads or screws", Node.count(all.fixings())));
    HtmlTable table =
        new HtmlTable(
            "What the rack weighs, and what building it uses up",
            List.of(HtmlTable.Column.words("What"), HtmlTable.Column.words("How much")),
            0,
            rows);
    return new Section("quantities", "Quantities", List.of(table.node()));
  }

  private static List<Node> row(String what, Node amount) {
    return List.of(Node.text(what), amount);
  }

  private static Node centre(Point3 point) {
    return Element.of(
        "span",
        Measures.rounded(point.x()),
        Node.text(" from the left, "),
        Measures.rounded(point.y()),
        Node.text(" from the front, "),
        Measures.rounded(point.z()),
        Node.text(" above the floor"));
  }
}
