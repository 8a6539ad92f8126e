package org.slatwright.design.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.design.mechanics.StillAir;

class ClimateTest {

  /** EN 1995-1-1, tables 3.1 (solid timber, long term) and 3.2, service classes 1, 2 and 3. */
  @ParameterizedTest
  @CsvSource({"INDOORS, 0.70, 0.60", "COVERED, 0.70, 0.80", "OUTDOORS, 0.55, 2.00"})
  void aClimateIsAServiceClass(Climate climate, double kMod, double kDef) {
    assertEquals(kMod, climate.longTermFactor());
    assertEquals(kDef, climate.creep());
  }

  /** EN 1995-1-1, 2.3.1.3, notes: at most 12 and 20 % in classes 1 and 2, more in class 3. */
  @Test
  void woodIsAsDampAsItsServiceClassAllows() {
    assertTrue(Climate.INDOORS.dampest() <= 12);
    assertTrue(Climate.COVERED.dampest() <= 20);
    assertTrue(Climate.OUTDOORS.dampest() > 20);
  }

  /** At 20 °C in the air of the Javadoc: Wood Handbook, equation 4-5. */
  @ParameterizedTest
  @CsvSource({"INDOORS, 0.35, 0.65", "COVERED, 0.55, 0.80"})
  void woodUnderARoofIsAsDampAsTheAirMakesIt(Climate climate, double dry, double damp) {
    assertEquals(StillAir.equilibrium(20, dry), climate.driest(), 1);
    assertEquals(StillAir.equilibrium(20, damp), climate.dampest(), 1);
  }
}
