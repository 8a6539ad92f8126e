package org.slatwright.design.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.design.mechanics.Moisture;

class ClimateTest {

  /** EN 1995-1-1, tables 3.1 (solid timber, long term) and 3.2 (solid timber). */
  @ParameterizedTest
  @CsvSource({"INDOORS, 1, 0.70, 0.60", "COVERED, 2, 0.70, 0.80", "OUTDOORS, 3, 0.55, 2.00"})
  void aClimateIsAServiceClass(Climate climate, int serviceClass, double kMod, double kDef) {
    assertEquals(serviceClass, climate.serviceClass());
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
    assertEquals(Moisture.equilibrium(20, dry), climate.driest(), 1);
    assertEquals(Moisture.equilibrium(20, damp), climate.dampest(), 1);
  }
}
