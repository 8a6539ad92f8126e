package org.slatwright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AreaTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0.00 m²",
    "4999, 0.00 m²",
    "5000, 0.01 m²",
    "1000000, 1.00 m²",
    "4265000, 4.27 m²"
  })
  void anAreaIsShownInSquareMetres(long squareMillimetres, String shown) {
    assertEquals(shown, new Area(squareMillimetres).withUnit(Unit.MM));
  }

  /** The square foot is 0.09290304 m²: NIST SP 811, B.8. */
  @ParameterizedTest
  @CsvSource({"0, 0 sq ft", "92903, 1 sq ft", "929030, 10 sq ft", "4273540, 46 sq ft"})
  void anInchPlanShowsSquareFeet(long squareMillimetres, String shown) {
    assertEquals(shown, new Area(squareMillimetres).withUnit(Unit.INCH));
  }

  @Test
  void squareMetresAreMillions() {
    assertEquals(4.265, new Area(4_265_000).m2());
  }

  @Test
  void noAreaIsNegative() {
    assertThrows(IllegalArgumentException.class, () -> new Area(-1));
  }
}
