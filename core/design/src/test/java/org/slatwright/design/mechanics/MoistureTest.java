package org.slatwright.design.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistureTest {

  /**
   * A flat-sawn and a quarter-sawn board of ponderosa pine from 8 to 14 %: coefficients of table
   * 13-5, worked out by equation 13-2 of the Wood Handbook, D·C·ΔM, and half a percent either way.
   */
  @ParameterizedTest
  @CsvSource({"0.00216, 1.153", "0.00133, 0.710"})
  void aBoardSwellsByItsCoefficient(double coefficient, double swelling) {
    assertEquals(swelling, Moisture.change(89, coefficient, 8, 14), 0.005 * swelling);
  }

  /** A flooring trade page: mesquite, 0.00129, 5 in wide, from 6 to 9 %, moves 0.019 in. */
  @Test
  void aFloorboardMovesAsTheTradeReckons() {
    assertEquals(0.019, Moisture.change(5, 0.00129, 6, 9), 0.0005);
  }

  /** Wood Handbook: shrinkage of table 4-3 against the coefficient of table 13-5. */
  @ParameterizedTest
  @CsvSource({
    "5.5, 0.00190",
    "11.9, 0.00431",
    "7.3, 0.00256",
    "9.5, 0.00338",
    "3.7, 0.00126",
    "7.1, 0.00248",
    "4.9, 0.00169",
    "7.8, 0.00274"
  })
  void aCoefficientFollowsFromShrinkage(double shrinkage, double coefficient) {
    assertEquals(coefficient, Moisture.coefficient(shrinkage), 0.000006);
    assertEquals(shrinkage, Moisture.shrinkage(coefficient), 0.03);
  }

  /** By definition of the shrinkage S: green wood loses S % when dried out. */
  @Property
  void greenWoodDriedOutHasLostItsTotalShrinkage(@ForAll @DoubleRange(min = 1, max = 13) double s) {
    double lost = -Moisture.change(100, Moisture.coefficient(s), 30, 0);

    assertEquals(s, lost, 1e-9);
  }

  /** And soaked again it is as wide as before. */
  @Property
  void woodComesBackToItsWidth(
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.005) double coefficient,
      @ForAll @DoubleRange(min = 0, max = 30) double from,
      @ForAll @DoubleRange(min = 0, max = 30) double to) {
    double there = 100 + Moisture.change(100, coefficient, from, to);
    double back = there + Moisture.change(there, coefficient, to, from);

    assertEquals(100, back, 1e-9);
  }

  /** Equation 13-2 of the Wood Handbook, of which the coefficient is that of wood at 10 %. */
  @Test
  void atTenPercentBothEquationsAgree() {
    assertEquals(89 * 0.00216 * 2, Moisture.change(89, 0.00216, 10, 12), 1e-9);
  }

  @Test
  void waterloggedWoodSwellsNoFurther() {
    assertEquals(0, Moisture.change(89, 0.00216, 30, 60));
  }

  /**
   * Wood Handbook, table 4-2, moisture of wood at 21.1 °C (70 °F), to a tenth of a percent: from
   * memory.
   */
  @ParameterizedTest
  @CsvSource({"0.30, 6.2", "0.50, 9.2", "0.65, 12.0", "0.80, 16.0"})
  void woodComesToTheMoistureOfTheAir(double humidity, double moisture) {
    assertEquals(moisture, StillAir.equilibrium(21.1, humidity), 0.1);
  }

  /**
   * Norway spruce, European oak and beech at 20 °C and 37 and 83 %: europeanwood.org, 7.0 to 8.9
   * and 15.7 to 17.2 %.
   */
  @Test
  void theEquilibriumLiesAmongThoseOfEuropeanWoods() {
    double dry = StillAir.equilibrium(20, 0.37);
    double damp = StillAir.equilibrium(20, 0.83);

    assertTrue(dry > 7.0 && dry < 8.9, "at 37 %: " + dry);
    assertTrue(damp > 15.7 && damp < 17.2, "at 83 %: " + damp);
  }
}
