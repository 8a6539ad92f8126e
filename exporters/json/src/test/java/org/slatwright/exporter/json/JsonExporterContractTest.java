package org.slatwright.exporter.json;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

/** The json exporter keeps the contract. */
class JsonExporterContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new JsonExporter();
  }
}
