package org.slatwright.exporter.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;

/** The settings of the stop block, in sequence. */
final class Stops {

  private Stops() {}

  static Section of(Plan plan) {
    List<List<Node>> rows = new ArrayList<>();
    for (TimberCuts timber : plan.cutting().timbers()) {
      for (StopSetting setting : timber.settings()) {
        rows.add(row(timber, setting, rows.size() + 1));
      }
    }
    HtmlTable table =
        new HtmlTable(
            "From the blade to the stop block: set each length once, cut all that is named",
            List.of(
                HtmlTable.Column.ticks(),
                HtmlTable.Column.numbers("No."),
                HtmlTable.Column.lengths("Setting"),
                HtmlTable.Column.words("Cut at it")),
            1,
            rows);
    return new Section(
        "stops", "Stop-block settings", rows.isEmpty() ? List.of() : List.of(table.node()));
  }

  private static List<Node> row(TimberCuts timber, StopSetting setting, int number) {
    return List.of(
        new Tick("stop-" + number).alone("Cut: setting " + number),
        Node.count(number),
        Measures.number(setting.length()),
        Element.of(
            "span", Node.text(works(setting)), Element.of("span", timber.timber()).styled("note")));
  }

  /** Boards that give as many of the same pieces are named together. */
  private static String works(StopSetting setting) {
    Map<String, List<String>> boards = new LinkedHashMap<>();
    for (StopSetting.Work work : setting.works()) {
      boards
          .computeIfAbsent(work.count() + " × " + work.piece(), pieces -> new ArrayList<>())
          .add(work.board());
    }
    List<String> said = new ArrayList<>();
    boards.forEach(
        (pieces, marks) ->
            said.add(
                pieces
                    + " from "
                    + (marks.size() == 1 ? "" : "each of ")
                    + String.join(", ", marks)));
    return String.join("; ", said);
  }
}
