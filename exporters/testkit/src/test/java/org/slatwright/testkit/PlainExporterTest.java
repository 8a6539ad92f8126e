package org.slatwright.testkit;

import org.slatwright.api.export.Exporter;

/** A plain exporter keeps the whole contract. */
class PlainExporterTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new PlainExporter();
  }
}
