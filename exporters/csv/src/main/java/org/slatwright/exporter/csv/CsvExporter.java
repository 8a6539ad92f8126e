package org.slatwright.exporter.csv;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Plan;

/** Writes the tables of a plan as CSV. */
public final class CsvExporter implements Exporter {

  private static final String FRACTIONS = "fractions";
  private static final ExportOption INCHES =
      new ExportOption(
          "inches",
          "how inches are written: 4.375, or 4 3/8 (which a spreadsheet may take for a date)",
          List.of("decimal", FRACTIONS));

  @Override
  public String format() {
    return "csv";
  }

  @Override
  public String description() {
    return "cut list, cutting plan, buying list, hole list, quantities and findings as tables";
  }

  @Override
  public List<ExportOption> options() {
    return List.of(INCHES);
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination) throws IOException {
    Function<Length, String> spelling =
        spelling(plan.lengths(), options.value(INCHES.name()).equals(FRACTIONS));
    for (Table table : new PlanTables(plan, spelling).all()) {
      destination.file(table.name() + ".csv", out -> CsvWriter.write(table, out));
    }
  }

  private static Function<Length, String> spelling(LengthFormat lengths, boolean fractions) {
    return fractions ? lengths::number : lengths::decimal;
  }
}
