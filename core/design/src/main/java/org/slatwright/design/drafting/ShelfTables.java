package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Piece;
import org.slatwright.design.drafting.Table.Column;

/** What of the shelves is told in tables. */
final class ShelfTables {

  private static final int ROWS = 14;
  private static final String HEADING = "All rows, the first of which is drawn";

  private ShelfTables() {}

  /** Where fasteners go on slats of each width, where there are several. */
  static Optional<SheetBlock> widths(
      List<ShelfUnit> units, List<Fastener> fasteners, LengthFormat lengths) {
    Map<Length, TreeSet<Length>> byWidth = new TreeMap<>();
    for (Fastener each : fasteners) {
      Piece slat = each.through();
      byWidth
          .computeIfAbsent(slat.box().size(Axis.Y), key -> new TreeSet<>())
          .add(each.head().y().minus(slat.box().low().y()));
    }
    if (byWidth.size() == 1) {
      return Optional.empty();
    }
    List<List<String>> rows =
        byWidth.entrySet().stream()
            .map(
                entry ->
                    List.of(
                        lengths.number(entry.getKey()),
                        entry.getValue().stream()
                            .map(lengths::number)
                            .collect(Collectors.joining(", "))))
            .toList();
    String kind = fasteners.get(0).kind().word();
    Table table =
        new Table(
            List.of(
                new Column("Slat width", 20, true),
                new Column("From its front edge", 46, false, Column.ALL)),
            rows);
    return Optional.of(new TableBlock("fasteners", "Where each " + kind + " goes", table));
  }

  /** Every row of slats, from its front edge at the front end of the rail. */
  static List<SheetBlock> rows(List<ShelfUnit> units, LengthFormat lengths) {
    List<List<String>> rows =
        units.stream()
            .flatMap(unit -> unit.rows().stream().map(row -> row(unit, row, lengths)))
            .toList();
    List<SheetBlock> tables = new ArrayList<>();
    for (int from = 0; from < rows.size(); from += ROWS) {
      Table table =
          new Table(
              List.of(
                  new Column("Where", 40, false, Column.ALL),
                  new Column(
                      "Slats, and their front edges from the front upright",
                      122,
                      false,
                      Column.ALL)),
              rows.subList(from, Math.min(rows.size(), from + ROWS)));
      String heading = HEADING + (tables.isEmpty() ? "" : " (continued)");
      tables.add(new TableBlock("rows-" + (tables.size() + 1), heading, table));
    }
    return tables;
  }

  private static List<String> row(ShelfUnit unit, List<Piece> row, LengthFormat lengths) {
    Length start = unit.frames().get(0).rail().box().low().y();
    return List.of(
        unit.name(),
        row.stream()
            .map(
                slat ->
                    slat.part().mark() + " at " + lengths.number(slat.box().low().y().minus(start)))
            .collect(Collectors.joining(", ")));
  }
}
