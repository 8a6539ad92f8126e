package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Plan;

/** Size, weight, and how the sizes add up. */
final class Overview {

  private static final String SOLVED = "*";

  private final Plan plan;

  private Overview(Plan plan) {
    this.plan = plan;
  }

  static Section of(Plan plan) {
    Overview overview = new Overview(plan);
    List<Node> content = new ArrayList<>(List.of(overview.facts()));
    if (!plan.chains().isEmpty()) {
      content.add(overview.sums());
    }
    return new Section("sizes", "Main sizes", content);
  }

  private Node facts() {
    Box box = plan.assembly().extent();
    List<Element> facts = new ArrayList<>();
    facts.add(fact("Width", Measures.length(box.size(Axis.X))));
    facts.add(fact("Depth", Measures.length(box.size(Axis.Y))));
    facts.add(fact("Height", Measures.length(box.size(Axis.Z))));
    facts.add(fact("Weight, empty", Measures.inEither(plan.quantities().mass()::withUnit)));
    if (!plan.cutting().volume().equals(Volume.ZERO)) {
      facts.add(fact("Timber to buy", Measures.inEither(plan.cutting().volume()::withUnit)));
    }
    plan.cutting().cost().ifPresent(cost -> facts.add(fact("Cost", Measures.money(cost))));
    OrderOfWork work = plan.work();
    if (!work.steps().isEmpty()) {
      facts.add(fact("Work, about", Node.text(work.work().words())));
      facts.add(fact("From start to end", Node.text(work.elapsed().words())));
    }
    return Element.of("dl", facts).styled("facts");
  }

  static Element fact(String name, Node value) {
    return Element.of("div", Element.of("dt", name), Element.of("dd", value));
  }

  private Node sums() {
    HtmlTable table =
        new HtmlTable(
            "How the sizes add up",
            List.of(
                HtmlTable.Column.words("Chain"),
                HtmlTable.Column.lengths("Total"),
                HtmlTable.Column.words("Its links")),
            0,
            plan.chains().stream().map(Overview::row).toList());
    return isSolved()
        ? Element.of(
            "div",
            table.node(),
            Element.of("p", SOLVED + " worked out, not given by the maker").styled("small"))
        : table.node();
  }

  private boolean isSolved() {
    return plan.chains().stream()
        .flatMap(chain -> chain.links().stream())
        .anyMatch(Chain.Link::solved);
  }

  private static List<Node> row(Chain chain) {
    List<Node> sum = new ArrayList<>();
    for (Chain.Link link : chain.links()) {
      String sign = sum.isEmpty() ? "= " : " + ";
      sum.add(Node.text(sign));
      sum.add(
          Element.of(
                  "span",
                  Node.text(link.name() + " "),
                  Measures.number(link.length()),
                  Node.text(link.solved() ? SOLVED : ""))
              .styled("together"));
    }
    return List.of(
        Node.text(chain.name()), Measures.number(chain.total()), Element.of("span", sum));
  }
}
