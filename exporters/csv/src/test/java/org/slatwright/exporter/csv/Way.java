package org.slatwright.exporter.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthGrammar;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

/** A plan and how its inches are written. */
record Way(Plan plan, String inches) {

  static Stream<Way> all() {
    return Stream.concat(
            Stream.of(WareRack.inMillimetres(), WareRack.inInches(), SamplePlans.everyKind()),
            SamplePlans.examples().stream())
        .flatMap(plan -> Stream.of(new Way(plan, "decimal"), new Way(plan, "fractions")));
  }

  /** The rows of a table, by column, as Python reads them; none where there is no such table. */
  List<Map<String, String>> read(String name, Path folder)
      throws IOException, InterruptedException {
    var written = Written.plan(plan, inches);
    return written.names().contains(name)
        ? ReadByPython.table(written.bytes(name), folder)
        : List.of();
  }

  /** The plan's own unit is the one that the column names. */
  void assertLength(Length exact, Map<String, String> row, String column) {
    String unit = plan.lengths().unit().symbol();
    String cell = row.get(column + " (" + unit + ")");
    LengthGrammar grammar = new LengthGrammar(plan.lengths().unit());
    Length read = grammar.read(cell).orElseThrow(() -> new AssertionError(column + ": " + cell));
    // In inches, metric stock is stated to 0.0001 in.
    long rounding = plan.lengths().isExact(exact) ? 0 : Length.inches(1, 20_000).nanometres();
    assertEquals(exact.nanometres(), read.nanometres(), rounding, column);
  }
}
