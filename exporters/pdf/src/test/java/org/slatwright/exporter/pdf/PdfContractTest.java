package org.slatwright.exporter.pdf;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

class PdfContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new PdfExporter();
  }
}
