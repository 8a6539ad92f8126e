package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

class BuyingTextTest {

  @Test
  void whatToBuyWhatItCostsAndWhatIsMissing() {
    assertEquals(
        List.of(
            "to buy             2 × 450 mm norway spruce, frame stock 44 × 44 mm",
            "                     at 0.95: 1.90",
            "                   1 × brad 40 × 1.2 mm",
            "                   100 mm slat stock, so much in all",
            "in all             1.90 for what has a price, 0.0017 m³ of timber",
            "cutting            frame stock, proved: no plan costs less",
            "                   dowel rod, proved: no plan costs less",
            "                   slat stock, not enough boards",
            "missing            1 × S2, 100 mm of 16 × 60 mm"),
        BuyingText.of(SamplePlans.everyKind()));
  }

  @Test
  void inchesAreFractionsAndBoardFeet() {
    List<String> lines = BuyingText.of(WareRack.inInches());
    assertTrue(
        lines.contains("to buy             1 × 96\" norway spruce, frame stock 1 3/4\" × 1 3/4\""),
        lines::toString);
    assertTrue(
        lines.contains("in all             10.30 for what has a price, 3.79 board feet of timber"),
        lines::toString);
  }

  @Test
  void nothingIsSaidWhereNothingIsCut() {
    assertEquals(List.of(), BuyingText.of(SamplePlans.bare(WareRack.inMillimetres())));
  }

  @Test
  void everyExampleFitsATerminal() {
    for (Plan plan : SamplePlans.examples()) {
      BuyingText.of(plan).forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }
}
