package org.slatwright.exporter.json;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.slatwright.api.export.ExportException;
import org.slatwright.testkit.Approved;
import org.slatwright.testkit.WareRack;

/** A whole file, as somebody found it right. */
class JsonGoldenTest {

  @Test
  void aSmallRack() throws IOException, ExportException {
    String received = Written.files(WareRack.inMillimetres()).text("plan.json");
    Approved.check(getClass(), "ware-rack.approved.json", received);
  }
}
