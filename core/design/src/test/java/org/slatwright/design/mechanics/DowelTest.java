package org.slatwright.design.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DowelTest {

  private static final double INCH = 25.4;
  private static final double LBF = 4.4482216;
  private static final double PSI = LBF / INCH / INCH;

  /**
   * Eckelman's equation of 1969 (from memory), worked out in inches: ponderosa pine and birch, then
   * maple in maple; 0.834 x 0.375 x 1.5^0.89 x (0.95 x 1130 + 1880) = 1325 lbf.
   */
  @ParameterizedTest
  @CsvSource({
    "0.375, 1.5, 1130, 1880, 1325.1",
    "0.375, 1, 2330, 2330, 1421.0",
    "0.3937, 1.37795, 1130, 1880, 1290.0"
  })
  void aDowelIsDrawnOutByWhatTheEquationGivesInInches(
      double diameter, double depth, double member, double own, double lbf) {
    Dowel dowel = new Dowel(diameter * INCH, depth * INCH, member * PSI, own * PSI);

    assertEquals(lbf, dowel.withdrawal() / LBF, 0.3);
  }

  /**
   * Plain and spiral beech and oak dowels of 8 mm gave 3.0 to 8.6 MPa over the glued surface
   * (Podlena et al., BioResources 15(1), 1665, 2020): what a dowel may bear is below the least.
   */
  @ParameterizedTest
  @CsvSource({"8, 25", "10, 35", "12.7, 44"})
  void aDowelMayBearLessThanTheWeakestOfThoseTested(double diameter, double depth) {
    Dowel dowel = new Dowel(diameter, depth, 7.8, 13.9);
    double surface = Math.PI * diameter * depth;

    assertTrue(dowel.withdrawal() / surface > 3.0 && dowel.withdrawal() / surface < 8.6);
    assertTrue(dowel.safeWithdrawal() / surface <= 3.0 / 2);
    assertTrue(dowel.safeWithdrawal() <= dowel.withdrawal() / 4);
  }

  /**
   * Pegs of timber frames in shear: F_v = 4850·G_peg·G_base^0.75 psi (TFEC 1, from memory): a peg
   * of beech (0.64) in spruce (0.37) yields at 10.1 MPa, and this tenth more or less is all that
   * ours is beside it, before both are divided by what makes them safe.
   */
  @Test
  void aDowelIsShearedOffAboutAsThePegOfATimberFrame() {
    Dowel dowel = new Dowel(10, 35, 6.2, 13.9);
    double peg = 4850 * 0.64 * Math.pow(0.37, 0.75) * PSI;
    double area = Math.PI * 10 * 10 / 4;

    assertEquals(1, 4 * dowel.safeShear() / area / peg, 0.1);
  }

  /** Round bar: T = τ·π·D³/16, with 13.9 / 4 MPa in 10 mm: 682.3 N·mm (textbook). */
  @Test
  void aDowelThatIsWellGluedTwistsOffItself() {
    assertEquals(682.3, new Dowel(10, 35, 7.8, 13.9).safeTwist(), 0.1);
  }

  @Property
  void aThickerOrDeeperDowelIsNeverWeaker(
      @ForAll @DoubleRange(min = 3, max = 30) double diameter,
      @ForAll @DoubleRange(min = 3, max = 100) double depth,
      @ForAll @DoubleRange(min = 0, max = 20) double more) {
    Dowel dowel = new Dowel(diameter, depth, 6.2, 13.9);

    for (Dowel better :
        new Dowel[] {
          new Dowel(diameter + more, depth, 6.2, 13.9), new Dowel(diameter, depth + more, 6.2, 13.9)
        }) {
      assertTrue(better.safeWithdrawal() >= dowel.safeWithdrawal());
      assertTrue(better.safeShear() >= dowel.safeShear());
      assertTrue(better.safeTwist() >= dowel.safeTwist());
    }
  }
}
