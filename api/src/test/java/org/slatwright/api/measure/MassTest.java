package org.slatwright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0 g",
    "1, 1 g",
    "23, 23 g",
    "999, 999 g",
    "1000, 1 kg",
    "1005, 1.01 kg",
    "9994, 9.99 kg",
    "9999, 10 kg",
    "12345, 12.3 kg",
    "100000, 100 kg"
  })
  void aMassIsShownInKilogramsOrGrams(long grams, String shown) {
    assertEquals(shown, new Mass(grams).withUnit(Unit.MM));
  }

  /**
   * The pound is 0.45359237 kg: International Yard and Pound Agreement, 1959 (NIST SP 811, B.8);
   * the avoirdupois ounce is 28.349 523 125 g (B.8 too), a sixteenth of it.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0 oz",
    "1, 0.04 oz",
    "23, 0.8 oz",
    "28, 1 oz",
    "227, 8 oz",
    "450, 15.9 oz",
    "454, 1 lb",
    "680, 1.5 lb",
    "4536, 10 lb",
    "13608, 30 lb",
    "45359, 100 lb"
  })
  void anInchPlanShowsPoundsOrOunces(long grams, String shown) {
    assertEquals(shown, new Mass(grams).withUnit(Unit.INCH));
  }

  @Test
  void kilogramsAreRoundedToTheGram() {
    assertEquals(new Mass(1235), Mass.roundedKg(1.2346));
    assertEquals(1.235, new Mass(1235).kg());
  }

  @Test
  void massesAddUpAndCompare() {
    Mass tray = new Mass(1250);

    assertEquals(new Mass(1300), tray.plus(new Mass(50)));
    assertEquals(new Mass(5000), tray.times(4));
    assertTrue(tray.compareTo(new Mass(1300)) < 0);
  }

  @Test
  void noMassIsNegativeOrEndless() {
    assertThrows(IllegalArgumentException.class, () -> new Mass(-1));
    assertThrows(ArithmeticException.class, () -> new Mass(Long.MAX_VALUE).plus(new Mass(1)));
    assertThrows(ArithmeticException.class, () -> new Mass(Long.MAX_VALUE).times(2));
  }
}
