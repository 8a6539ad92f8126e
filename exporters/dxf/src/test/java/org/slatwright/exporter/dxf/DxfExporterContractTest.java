package org.slatwright.exporter.dxf;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

/** The dxf exporter keeps the contract. */
class DxfExporterContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new DxfExporter();
  }
}
