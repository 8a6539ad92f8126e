package org.slatwright.exporter.png;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

class PngContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new PngExporter();
  }
}
