package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

class QuantityTextTest {

  @Test
  void eachQuantityIsALineInTheMakersUnit() {
    assertEquals(
        List.of(
            "weight             1.23 kg, empty",
            "centre of gravity  110 mm above the floor, empty",
            "finish area        0.10 m²",
            "glue               3 g",
            "dowels             1, 79 mm of rod",
            "fixings            1"),
        QuantityText.of(SamplePlans.everyKind()));
    assertTrue(QuantityText.of(WareRack.inInches()).get(0).endsWith(" lb, empty"));
  }
}
