package org.slatwright.design.drafting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.StopSetting.Work;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.design.drafting.Table.Column;
import org.slatwright.design.framing.Marks;
import org.slatwright.design.sizing.Rack;

/** What to cut in which order, what else to cut, and what to buy, as tables. */
final class OrderOfCutting {

  static final String NAME = "order-of-cutting";
  static final String TITLE = "Order of cutting";

  private final CuttingPlan plan;
  private final LengthFormat lengths;
  private final double width;

  private OrderOfCutting(CuttingPlan plan, LengthFormat lengths, double width) {
    this.plan = plan;
    this.lengths = lengths;
    this.width = width;
  }

  /** As many sheets as they take; none where nothing is cut or bought. */
  static List<SheetDrawing> of(Rack rack, CuttingPlan plan) {
    LengthFormat lengths = rack.lengths();
    return TextSheet.of(
        rack, NAME, TITLE, width -> new OrderOfCutting(plan, lengths, width).texts());
  }

  private List<RunningText<?>> texts() {
    List<RunningText<?>> texts = new ArrayList<>();
    texts.add(
        table(
            "missing",
            "No board is left for",
            missing(),
            column("Mark", 0.1),
            number("Quantity", 0.1),
            number("Size", 0.25),
            column("Timber", 0.55)));
    int step = 1;
    for (int i = 0; i < plan.timbers().size(); i++) {
      TimberCuts timber = plan.timbers().get(i);
      texts.add(
          table(
              "settings-" + (i + 1),
              "Cut: " + timber.timber(),
              settings(timber, step),
              number("Step", 0.08),
              number("Stop block at", 0.16),
              column("Pieces from each board", 0.76)));
      step += timber.settings().size();
    }
    texts.add(shelves());
    texts.add(
        table(
            "spares",
            "Spare pieces, which the rack does not keep",
            spares(),
            column("Mark", 0.07),
            column("What", 0.21),
            column("Stock", 0.12),
            number("Length", 0.12),
            number("Wanted", 0.1),
            number("Offcuts give", 0.12),
            column("Use", 0.26)));
    texts.add(
        table(
            "buying",
            "To buy",
            buying(),
            column("What", 0.37),
            number("Quantity", 0.1),
            number("Length", 0.13),
            number("Price", 0.09),
            number("Cost", 0.11),
            column("Note", 0.2)));
    return texts;
  }

  private static RunningText<List<String>> table(
      String id, String heading, List<List<String>> rows, Column... columns) {
    return HeadedTable.running(id, heading, rows, List.of(columns));
  }

  private Column column(String heading, double share) {
    return new Column(heading, width * share, false, Column.ALL);
  }

  private Column number(String heading, double share) {
    return new Column(heading, width * share, true, Column.ALL);
  }

  private List<List<String>> missing() {
    return plan.timbers().stream()
        .flatMap(
            timber ->
                timber.missing().stream()
                    .map(
                        piece ->
                            List.of(
                                piece.mark(),
                                Integer.toString(piece.count()),
                                lengths.size(piece.length(), piece.width(), piece.thickness()),
                                timber.timber())))
        .toList();
  }

  private List<List<String>> settings(TimberCuts timber, int first) {
    List<List<String>> rows = new ArrayList<>();
    for (StopSetting setting : timber.settings()) {
      rows.add(
          List.of(
              Integer.toString(first + rows.size()),
              lengths.withUnit(setting.length()),
              works(setting.works())));
    }
    return rows;
  }

  /** Boards that give as many of the same pieces are named together. */
  private static String works(List<Work> works) {
    Map<String, List<String>> boards = new LinkedHashMap<>();
    for (Work work : works) {
      String pieces = work.count() + " × " + work.piece();
      boards.computeIfAbsent(pieces, key -> new ArrayList<>()).add(work.board());
    }
    List<String> said = new ArrayList<>();
    boards.forEach(
        (pieces, marks) ->
            said.add(pieces + " from " + (marks.size() == 1 ? "" : "each of ") + Marks.of(marks)));
    return String.join("; ", said);
  }

  /** Bays are told only where each has slats of its own. */
  private RunningText<List<String>> shelves() {
    boolean bays = plan.shelves().stream().anyMatch(shelf -> shelf.run() > 1);
    String heading = "Slats of each shelf, the lowest first" + (bays ? ", bays from the left" : "");
    return table(
        "shelves",
        heading,
        plan.shelves().stream().map(shelf -> row(shelf, bays)).toList(),
        column("Shelf", 0.14),
        column("Slats from the front back", 0.56),
        number("Gaps", 0.12),
        column("Note", 0.18));
  }

  private List<String> row(ShelfSlats shelf, boolean bays) {
    return List.of(
        shelf.shelf() + (bays ? ", bay " + shelf.run() : ""),
        Marks.of(shelf.marks()),
        lengths.withUnit(shelf.gap()),
        shelf.filled() ? "" : "slats are missing");
  }

  private List<List<String>> spares() {
    return plan.spares().stream()
        .map(
            spare ->
                List.of(
                    spare.mark(),
                    spare.name(),
                    spare.stock().word(),
                    lengths.withUnit(spare.length()),
                    Integer.toString(spare.wanted()),
                    Integer.toString(spare.fromOffcuts()),
                    spare.use()))
        .toList();
  }

  private List<List<String>> buying() {
    if (plan.buying().isEmpty()) {
      return List.of();
    }
    String volume = "Together: " + plan.volume().withUnit(lengths.unit()) + " of timber";
    String cost = plan.cost().map(BigDecimal::toPlainString).orElse("");
    return Stream.concat(
            plan.buying().stream().map(this::row), Stream.of(List.of(volume, "", "", "", cost, "")))
        .toList();
  }

  private List<String> row(Purchase purchase) {
    return List.of(
        purchase.what(),
        purchase.quantity().map(String::valueOf).orElse(""),
        purchase.length().map(lengths::withUnit).orElse(""),
        purchase.price().map(BigDecimal::toPlainString).orElse(""),
        purchase.cost().map(BigDecimal::toPlainString).orElse(""),
        purchase.note());
  }
}
