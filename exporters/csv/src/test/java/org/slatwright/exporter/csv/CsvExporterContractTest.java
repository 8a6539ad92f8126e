package org.slatwright.exporter.csv;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

/** The csv exporter keeps the contract. */
class CsvExporterContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new CsvExporter();
  }
}
