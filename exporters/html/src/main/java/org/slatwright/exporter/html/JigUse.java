package org.slatwright.exporter.html;

import java.util.List;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Plan;

/** How to use the drilling jig. */
final class JigUse {

  private JigUse() {}

  static Section of(Plan plan) {
    return new Section("jig", "Drilling jig", plan.jig().map(JigUse::content).orElse(List.of()));
  }

  private static List<Node> content(Jig jig) {
    return List.of(
        Element.of(
            "p",
            Node.text("Its holes are ø "),
            Measures.length(jig.guideDiameter()),
            Node.text(" and hold the bit over "),
            Measures.length(jig.guideDepth()),
            Node.text(".")),
        Element.of("ol", jig.use().stream().map(use -> Element.of("li", use)).toList())
            .styled("doing"));
  }
}
