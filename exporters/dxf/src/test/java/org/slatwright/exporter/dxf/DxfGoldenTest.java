package org.slatwright.exporter.dxf;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.testkit.Approved;
import org.slatwright.testkit.WareRack;

/** A whole file of each version, as somebody found it right. */
class DxfGoldenTest {

  @ParameterizedTest
  @ValueSource(strings = {"R2000", "R12"})
  void aSmallPlate(String version) throws IOException {
    String file = new Written(WareRack.inMillimetres(), version, "plan").texts().get(0);
    Approved.check(getClass(), "guide-plate-" + version + ".approved.dxf", file);
  }
}
