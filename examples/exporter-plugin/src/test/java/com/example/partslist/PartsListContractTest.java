package com.example.partslist;

import org.slatwright.api.export.Exporter;
import org.slatwright.testkit.ExporterContract;

/** Everything that Slatwright relies on, in one line. */
class PartsListContractTest extends ExporterContract {

  @Override
  protected Exporter exporter() {
    return new PartsListExporter();
  }
}
