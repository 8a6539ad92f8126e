package org.slatwright.exporter.html;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

class HtmlContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new HtmlExporter();
  }
}
