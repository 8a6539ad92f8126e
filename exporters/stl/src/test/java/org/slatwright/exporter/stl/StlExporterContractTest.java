package org.slatwright.exporter.stl;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

/** The stl exporter keeps the contract. */
class StlExporterContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new StlExporter();
  }
}
