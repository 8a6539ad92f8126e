package org.slatwright.exporter.svg;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

class SvgContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new SvgExporter();
  }
}
