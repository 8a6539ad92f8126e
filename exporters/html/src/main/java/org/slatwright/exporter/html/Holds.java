package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Plan;

/** What it holds: a row for each thing and the shelves that take it alike. */
final class Holds {

  /** With spaces that hold a line together. */
  private static final String TIMES = "\u00a0×\u00a0";

  private Holds() {}

  static Section of(Plan plan) {
    List<List<Node>> rows = runs(plan.fits()).stream().map(Holds::row).toList();
    HtmlTable table =
        new HtmlTable(
            "What goes on one shelf of a bay, shelves counted from the floor",
            List.of(
                HtmlTable.Column.words("Thing"),
                HtmlTable.Column.words("Shelf"),
                HtmlTable.Column.words("Across × deep × high"),
                HtmlTable.Column.lengths("Spare across"),
                HtmlTable.Column.lengths("Spare deep"),
                HtmlTable.Column.lengths("Spare above")),
            0,
            rows);
    return new Section(
        "holds", "What it holds", rows.isEmpty() ? List.of() : List.of(table.node()));
  }

  private static List<List<Fit>> runs(List<Fit> fits) {
    List<List<Fit>> runs = new ArrayList<>();
    for (Fit fit : fits) {
      if (runs.isEmpty() || !isAlike(runs.get(runs.size() - 1).get(0), fit)) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(fit);
    }
    return runs;
  }

  private static boolean isAlike(Fit first, Fit other) {
    return row(List.of(first)).equals(row(List.of(onShelf(first.shelf(), other))));
  }

  private static Fit onShelf(int shelf, Fit fit) {
    return new Fit(
        fit.thing(),
        shelf,
        fit.turned(),
        fit.across(),
        fit.deep(),
        fit.high(),
        fit.spareAcross(),
        fit.spareDeep(),
        fit.spareAbove(),
        fit.enough());
  }

  private static List<Node> row(List<Fit> alike) {
    Fit fit = alike.get(0);
    int last = alike.get(alike.size() - 1).shelf();
    return List.of(
        Node.text(fit.thing()),
        Node.text(fit.shelf() == last ? fit.shelf() + "" : fit.shelf() + " to " + last),
        Node.text(amount(fit)),
        Measures.number(fit.spareAcross()),
        Measures.number(fit.spareDeep()),
        fit.spareAbove().map(Measures::number).orElse(Node.text("open")));
  }

  private static String amount(Fit fit) {
    String high = fit.high().map(count -> TIMES + count).orElse("");
    return fit.across()
        + TIMES
        + fit.deep()
        + high
        + (fit.turned() ? ", turned" : "")
        + (fit.enough() ? "" : ", fewer than asked for");
  }
}
