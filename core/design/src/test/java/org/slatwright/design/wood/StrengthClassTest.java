package org.slatwright.design.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StrengthClassTest {

  /** EN 338:2016, tables 1 and 3. */
  @ParameterizedTest
  @CsvSource({
    "C14, 14, 3.0, 2.0, 7000, 290, 350",
    "C16, 16, 3.2, 2.2, 8000, 310, 370",
    "C24, 24, 4.0, 2.5, 11000, 350, 420",
    "C30, 30, 4.0, 2.7, 12000, 380, 460",
    "D18, 18, 3.5, 4.8, 9500, 475, 570",
    "D24, 24, 3.7, 4.9, 10000, 485, 580",
    "D40, 40, 4.2, 5.5, 13000, 550, 660"
  })
  void aClassHasTheValuesOfTheStandard(
      StrengthClass grade,
      double bending,
      double shear,
      double crushing,
      double stiffness,
      double leastDensity,
      double density) {
    assertEquals(bending, grade.bending());
    assertEquals(shear, grade.shear());
    assertEquals(crushing, grade.crushing());
    assertEquals(stiffness, grade.stiffness());
    assertEquals(leastDensity, grade.leastDensity());
    assertEquals(density, grade.density());
  }

  /**
   * How EN 384:2016 (from memory) derives the other properties: f_c,90 is 0.007 or 0.01 of the
   * density; f_v is 1.6 + 0.1 f_m, at most 4, or 3 + 0.03 f_m; the mean density 1.2 of the least.
   */
  @ParameterizedTest
  @EnumSource
  void theValuesOfAClassFitOneAnother(StrengthClass grade) {
    boolean soft = grade.name().startsWith("C");
    double bending = grade.bending();

    assertEquals((soft ? 0.007 : 0.01) * grade.leastDensity(), grade.crushing(), 0.051);
    assertEquals(
        soft ? Math.min(4, 1.6 + 0.1 * bending) : 3 + 0.03 * bending, grade.shear(), 0.051);
    assertEquals(1.2 * grade.leastDensity(), grade.density(), 5.1);
  }

  @Test
  void aClassIsFoundInCapitalsOrNot() {
    assertEquals(Optional.of(StrengthClass.C24), StrengthClass.named("c24"));
    assertEquals(Optional.of(StrengthClass.D24), StrengthClass.named("D24"));
    assertEquals(Optional.empty(), StrengthClass.named("C25"));
  }
}
