package org.slatwright.exporter.csv;

import java.io.IOException;
import java.util.Map;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;

/** A plan written as CSV. */
final class Written {

  private Written() {}

  static RecordingDestination plan(Plan plan, String inches) throws IOException {
    CsvExporter exporter = new CsvExporter();
    RecordingDestination destination = new RecordingDestination();
    OptionValues options = OptionValues.of(exporter.options(), Map.of("inches", inches));
    exporter.export(plan, options, destination);
    return destination;
  }
}
