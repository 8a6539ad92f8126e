package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.ORCHIDS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.plan.Finding;

/** Brads and screws that are advised are sold (common practice, from memory) and hold. */
class BetterFixingTest {

  private static final String PINE = "timber.frame.species=ponderosa pine C16";

  /**
   * Wood Handbook, chapter 8, and virtual work, 20 lbf or 89 N to hold: brads 27 mm deep pull 47.3
   * N each of 1.2 mm, 63.1 N of 1.6 mm. With arms of 22 mm two thick ones hold 73 N and three thin
   * ones 82 N; three thick ones hold 93 N even with two of them 14 mm and one 30 mm from the edge.
   * A screw of 4 mm goes seven diameters, 28 mm, below 18 mm of slat: 46, sold as 50.
   */
  @Test
  void aRackThatLeansIsGivenAsFewBradsAsHold() throws Exception {
    Finding finding =
        Designs.finding("sideways-push", ORCHIDS, PINE, "joint.fixing={length: 45, diameter: 1.2}");
    String last = finding.advice().substring(finding.advice().indexOf("anchored, or ") + 13);

    assertEquals(
        "set joint.fixing.length=45 and joint.fixing.diameter=1.6 and joint.fixing.per-end=3, or"
            + " joint.fixing.kind=screw and joint.fixing.length=50 and joint.fixing.diameter=4",
        last);
  }

  /** Ponderosa: 14 × 1.2 = 16.8 below a slat of 18 mm: 35 in steps of 5; a brad of 30 is not. */
  @ParameterizedTest
  @CsvSource({"30", "34", "34.7"})
  void aBradTooShortIsAdvisedLonger(String length) throws Exception {
    Finding finding =
        Designs.finding(
            "fixing-penetration",
            ORCHIDS,
            PINE,
            "rack.brace=back",
            "joint.fixing={length: " + length + ", diameter: 1.2}");

    assertEquals(
        "set joint.fixing.length=35 and joint.fixing.diameter=1.2",
        finding.advice().split(", or ")[0]);
  }

  @Test
  void aBraceHoldsARackThatLeans() throws Exception {
    Design design = Designs.of(ORCHIDS, PINE, "rack.brace=back");

    assertTrue(new SidewaysPush().holds(design));
    assertTrue(new SidewaysPush().isHeldOtherwise());
    assertFalse(new FixingSplitting().isHeldOtherwise());
    assertFalse(new SidewaysPush().holds(Designs.of(ORCHIDS, PINE)));
  }
}
