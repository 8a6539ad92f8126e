package org.slatwright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VolumeTest {

  /**
   * A board foot is 1 ft × 1 ft × 1 in, 144 in³ (American Softwood Lumber Standard PS 20, from
   * memory; NIST SP 811 has the inch as 25.4 mm exactly). Nominal sizes, as tables of board feet
   * count them, from memory: a 1×6 of 10 ft has 5, a 2×4 of 8 ft 5 1/3, a 4×4 of 12 ft 16.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 6, 1, 5.00 board feet",
    "8, 4, 2, 5.33 board feet",
    "12, 4, 4, 16.00 board feet",
    "1, 12, 1, 1.00 board feet"
  })
  void aBoardFootIsOneHundredAndFortyFourCubicInches(
      int feet, int width, int thickness, String shown) {
    Volume volume =
        Volume.of(
            Length.inches(12L * feet, 1), Length.inches(width, 1), Length.inches(thickness, 1));

    assertEquals(shown, volume.withUnit(Unit.INCH));
  }

  /** 2.4 m × 0.044 m × 0.044 m is 0.0046464 m³. */
  @Test
  void aMetricPlanShowsCubicMetres() {
    Volume volume = Volume.of(Length.mm(2400), Length.mm(44), Length.mm(44));

    assertEquals(new Volume(4_646_400), volume);
    assertEquals("0.0046 m³", volume.withUnit(Unit.MM));
    assertEquals("0.0465 m³", volume.times(10).withUnit(Unit.MM));
  }

  @Test
  void volumesAreRoundedToACubicMillimetreAndAddUp() {
    Length half = Length.mm(1).half();

    assertEquals(new Volume(1), Volume.of(Length.mm(1), Length.mm(1), half));
    assertEquals(Volume.ZERO, Volume.of(half, half, Length.mm(1)));
    assertEquals(new Volume(7), new Volume(3).plus(new Volume(4)));
  }

  @Test
  void noVolumeIsNegativeOrEndless() {
    assertThrows(IllegalArgumentException.class, () -> new Volume(-1));
    assertThrows(ArithmeticException.class, () -> new Volume(Long.MAX_VALUE).plus(new Volume(1)));
    assertThrows(ArithmeticException.class, () -> new Volume(Long.MAX_VALUE).times(2));
  }
}
