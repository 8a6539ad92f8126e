package org.slatwright.design.drafting;

import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutLine;
import org.slatwright.design.drafting.Table.Column;
import org.slatwright.design.framing.CutList;
import org.slatwright.design.framing.StockSection;
import org.slatwright.design.sizing.Rack;

/** Every part with its finished size, what it is cut from and what to mind, as a table. */
final class CutListSheet {

  static final String NAME = "cut-list";
  static final String TITLE = "Cut list";

  private CutListSheet() {}

  /** As many sheets as it takes. */
  static List<SheetDrawing> of(Rack rack, Assembly assembly) {
    LengthFormat lengths = rack.lengths();
    List<List<String>> rows =
        CutList.of(assembly, lengths).stream().map(line -> row(line, lengths)).toList();
    return TextSheet.of(
        rack,
        NAME,
        TITLE,
        width -> List.of(HeadedTable.running("cut-list", TITLE, rows, columns(width))));
  }

  private static List<Column> columns(double width) {
    return List.of(
        new Column("Mark", width * 0.07, false, Column.ALL),
        new Column("Part", width * 0.08, false, Column.ALL),
        new Column("Quantity", width * 0.09, true, Column.ALL),
        new Column("Finished size", width * 0.19, true, Column.ALL),
        new Column("Timber", width * 0.33, false, Column.ALL),
        new Column("Note", width * 0.24, false, Column.ALL));
  }

  private static List<String> row(CutLine line, LengthFormat lengths) {
    Part part = line.part();
    return List.of(
        part.mark(),
        part.name(),
        Integer.toString(part.quantity()),
        size(part, lengths),
        line.timber(),
        line.note());
  }

  private static String size(Part part, LengthFormat lengths) {
    if (part.shape() instanceof Shape.Rod rod) {
      return "ø " + lengths.section(rod.diameter(), rod.length());
    }
    StockSection section = StockSection.of(part);
    return lengths.size(part.shape().length(), section.first(), section.second());
  }
}
