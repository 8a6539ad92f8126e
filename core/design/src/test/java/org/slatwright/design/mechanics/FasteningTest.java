package org.slatwright.design.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the Wood Handbook, FPL-GTR-282 (2021), chapter 8, and the NDS. */
class FasteningTest {

  private static final double PONDEROSA = 0.40;
  private static final double N_PER_LBF = 4.4482216152605;

  /** Equation 8-1 worked out by hand; 31.03 lbf by its inch form, 7850·G^2.5·D·L (from memory). */
  @Test
  void aBradHoldsAsTheWoodHandbookSays() {
    double held = new Nail(1.2).withdrawal(PONDEROSA, 21);

    assertEquals(138.01, held, 0.005);
    double inches = 7850 * Math.pow(PONDEROSA, 2.5) * (1.2 / 25.4) * (21 / 25.4) * N_PER_LBF;
    assertEquals(inches, held, 0.0005 * inches);
  }

  /** Equation 8-10 worked out by hand: a number 8 screw (4.17 mm, table 8-9), 25 mm of thread. */
  @Test
  void aScrewHoldsAsTheWoodHandbookSays() {
    assertEquals(1805.6, new Screw(4.17).withdrawal(PONDEROSA, 25), 0.05);
  }

  /** NDS: 20.667 lbf an inch for a nail of 0.131 in in wood of 0.42. */
  @Test
  void whatIsUsedOfANailIsNoMoreThanTheNdsAllowsAndNotMuchLess() {
    double nds = 20.667 * N_PER_LBF;
    double used = new Nail(0.131 * 25.4).withdrawal(0.42, 25.4) / Fastening.SAFETY;

    assertTrue(used < nds && used > 0.94 * nds, used + " against " + nds);
  }

  /** The chapter's 14 diameters below 0.42 and 10 above 0.61. */
  @ParameterizedTest
  @CsvSource({"0.35, 14", "0.42, 14", "0.515, 12", "0.61, 10", "0.68, 10"})
  void lighterWoodAsksForADeeperNail(double gravity, double diameters) {
    assertEquals(diameters * 1.6, new Nail(1.6).leastDepth(gravity), 1e-9);
    assertEquals(7 * 4, new Screw(4).leastDepth(gravity), 1e-9, "from memory");
  }

  @Property(tries = 200)
  void heavierWoodNeverHoldsLess(
      @ForAll @DoubleRange(min = 0.29, max = 0.74) double gravity,
      @ForAll @DoubleRange(min = 0.29, max = 0.74) double other) {
    double light = Math.min(gravity, other);
    double heavy = Math.max(gravity, other);

    for (Fastening fastening : new Fastening[] {new Nail(1.2), new Screw(4)}) {
      assertTrue(fastening.withdrawal(light, 20) <= fastening.withdrawal(heavy, 20));
      assertTrue(fastening.leastDepth(light) >= fastening.leastDepth(heavy));
    }
  }
}
