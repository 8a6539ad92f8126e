package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Purchase;

/** What to buy. */
final class Buying {

  private final CuttingPlan cutting;

  private Buying(CuttingPlan cutting) {
    this.cutting = cutting;
  }

  static Section of(Plan plan) {
    return new Section("buying", "What to buy", new Buying(plan.cutting()).content());
  }

  private List<Node> content() {
    List<List<Node>> rows = new ArrayList<>();
    for (Purchase purchase : cutting.buying()) {
      rows.add(row(purchase, rows.size() + 1));
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    HtmlTable table =
        new HtmlTable(
            "To buy: tick what lies in the car",
            List.of(
                HtmlTable.Column.ticks(),
                HtmlTable.Column.words("What"),
                HtmlTable.Column.numbers("Pieces"),
                HtmlTable.Column.lengths("Length"),
                HtmlTable.Column.numbers("Each"),
                HtmlTable.Column.numbers("Cost")),
            1,
            rows);
    List<Node> content = new ArrayList<>(List.of(table.node()));
    content.addAll(total());
    return content;
  }

  private static List<Node> row(Purchase purchase, int number) {
    Node nothing = Node.text("");
    return List.of(
        new Tick("buy-" + number).alone("Bought: " + purchase.what()),
        Element.of(
            "span", Node.text(purchase.what()), Element.of("span", purchase.note()).styled("note")),
        purchase.quantity().map(Node::count).orElse(nothing),
        purchase.length().map(Measures::number).orElse(nothing),
        purchase.price().map(Measures::money).orElse(nothing),
        purchase.cost().map(Measures::money).orElse(nothing));
  }

  private List<Node> total() {
    boolean priced = cutting.buying().stream().allMatch(bought -> bought.cost().isPresent());
    List<Node> said = new ArrayList<>();
    cutting
        .cost()
        .ifPresent(
            cost ->
                said.add(
                    Node.text(
                        "In all "
                            + cost.toPlainString()
                            + (priced ? "." : " for what has a price."))));
    if (!cutting.volume().equals(Volume.ZERO)) {
      said.add(Node.text(said.isEmpty() ? "" : " "));
      said.add(Measures.inEither(cutting.volume()::withUnit));
      said.add(Node.text(" of timber."));
    }
    return said.isEmpty() ? List.of() : List.of(Element.of("p", said));
  }
}
