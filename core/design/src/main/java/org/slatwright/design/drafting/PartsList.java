package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.design.drafting.Table.Column;
import org.slatwright.design.framing.StockSection;

/**
 * The parts list of a sheet: mark, quantity, part, length, section, and timber where there is room.
 */
final class PartsList {

  private static final Column MARK = new Column("Mark", 13, false);
  private static final Column QUANTITY = new Column("Qty", 10, true);
  private static final Column LENGTH = new Column("Length", 18, true);
  private static final Column SECTION = new Column("Section", 26, false, 2);
  private static final List<Column> NARROW =
      List.of(MARK, QUANTITY, new Column("Part", 16, false), LENGTH, SECTION);
  private static final double LEAST_TIMBER = 40;

  private PartsList() {}

  static Table table(Assembly assembly, LengthFormat lengths, double room) {
    List<Column> columns = new ArrayList<>(NARROW);
    double used = NARROW.stream().mapToDouble(Column::width).sum();
    boolean timber = room - used >= LEAST_TIMBER;
    if (timber) {
      columns.add(new Column("Timber", room - used, false));
    }
    return new Table(
        columns, assembly.parts().stream().map(part -> row(part, lengths, timber)).toList());
  }

  /** Mark, quantity, length and section alone. */
  static Table sizes(List<Part> parts, LengthFormat lengths) {
    return new Table(
        List.of(MARK, QUANTITY, LENGTH, SECTION),
        parts.stream()
            .map(
                part ->
                    List.of(
                        part.mark(),
                        Integer.toString(part.quantity()),
                        lengths.number(part.shape().length()),
                        section(part, lengths)))
            .toList());
  }

  private static List<String> row(Part part, LengthFormat lengths, boolean timber) {
    Shape shape = part.shape();
    List<String> cells =
        new ArrayList<>(
            List.of(
                part.mark(),
                Integer.toString(part.quantity()),
                part.name(),
                lengths.number(shape.length()),
                section(part, lengths)));
    if (timber) {
      cells.add(part.material().species() + ", " + part.material().stock().word());
    }
    return cells;
  }

  private static String section(Part part, LengthFormat lengths) {
    if (part.shape() instanceof Shape.Rod rod) {
      return "ø " + lengths.number(rod.diameter());
    }
    StockSection section = StockSection.of(part);
    return lengths.number(section.first()) + " × " + lengths.number(section.second());
  }
}
