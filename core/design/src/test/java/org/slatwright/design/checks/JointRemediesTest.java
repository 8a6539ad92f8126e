package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.measure.Length;

/**
 * What is advised of dowels is the first that does, and has room: half the stock at most (WOOD
 * magazine, tips for dowel joinery), 1 1/2 diameters to an edge and three between two (common
 * practice, no source), and 2 mm or 1/16 in for glue below each.
 */
class JointRemediesTest {

  private static final Predicate<JointCase> ANY = joint -> true;

  private static final String STAND =
      """
      slatwright: 1
      title: Pottery stand
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 70 }
        dowel: { diameter: 10 }
      rack: { interior-width: 600, rail-length: 320, foot: 100, openings: [ 300 ] }
      slats: { per-shelf: 1 }
      joint: { dowels: 1, embedment: 35 }
      """;

  /**
   * 12 mm goes 42 deep, and 2 × (42 + 2) + 12 = 100 of rail; takes stock of 24, and 36 of height.
   */
  @ParameterizedTest
  @CsvSource({
    "rack.rail-length=100, true",
    "rack.rail-length=99, false",
    "timber.rails.section=24 x 44, true",
    "timber.rails.section=23 x 44, false",
    "timber.rails.section=44 x 36, true",
    "timber.rails.section=44 x 35, false"
  })
  void aThickerDowelIsAdvisedWhereItHasRoom(String setting, boolean fits) throws Exception {
    assertEquals(
        fits ? Optional.of("timber.dowel.diameter=12 and joint.embedment=42") : Optional.empty(),
        of(setting).thickerDowel(ANY));
  }

  @ParameterizedTest
  @CsvSource({"24 x 44, true", "23 x 44, false", "44 x 24, true", "44 x 23, false"})
  void anUprightThatIsTooThinTakesNoThickerDowel(String section, boolean fits) throws Exception {
    assertEquals(
        fits,
        of(
                "timber.frame.section=" + section,
                "timber.rails.section=" + section.substring(0, 2) + " x 44")
            .thickerDowel(ANY)
            .isPresent());
  }

  @Test
  void theThinnestThickerDowelThatHoldsIsAdvised() throws Exception {
    JointRemedies thin = of("timber.dowel.diameter=6", "joint.embedment=30");

    assertEquals(
        Optional.of("timber.dowel.diameter=8 and joint.embedment=30"), thin.thickerDowel(ANY));
    assertEquals(
        Optional.of("timber.dowel.diameter=10 and joint.embedment=35"),
        thin.thickerDowel(joint -> !joint.diameter().isLessThan(Length.mm(9))));
    assertEquals(Optional.empty(), thin.thickerDowel(joint -> false));
  }

  @Test
  void theThickestOtherDowelThatHoldsIsAdvised() throws Exception {
    assertEquals(
        Optional.of("timber.dowel.diameter=8"),
        of().otherDowel(joint -> joint.diameter().isLessThan(Length.mm(10))));
    assertEquals(Optional.of("timber.dowel.diameter=12"), of().otherDowel(ANY));
    assertEquals(Optional.empty(), of().otherDowel(joint -> false));
  }

  /**
   * Half of 60 is three times 10, half of 59 is not; half of 48 is three times 8, half of 47 is
   * not; 3 1/2 diameters deep: 28 and 21.
   */
  @ParameterizedTest
  @CsvSource({"60, 10, 35", "59, 8, 28", "48, 8, 28", "47, 6, 21", "36, 6, 21", "35, 0, 0"})
  void twoDowelsAreAsThickAsFit(int height, int diameter, int embedment) throws Exception {
    assertEquals(
        diameter == 0
            ? Optional.empty()
            : Optional.of(
                "joint.dowels=2 with timber.dowel.diameter="
                    + diameter
                    + " and joint.embedment="
                    + embedment),
        of("timber.rails.section=44 x " + height).twoDowels(ANY));
  }

  /** Six diameters high, 60; at most twice as high as now. */
  @ParameterizedTest
  @CsvSource({"29, false", "30, true", "44, true", "59, true", "60, false", "61, false"})
  void aRailIsAdvisedAtMostTwiceAsHigh(int height, boolean advised) throws Exception {
    assertEquals(
        advised
            ? Optional.of(
                "timber.rails.section=44x60 with joint.dowels=2 and timber.dowel.diameter=10"
                    + " and joint.embedment=35")
            : Optional.empty(),
        of("timber.rails.section=44 x " + height).twoDowelsInAHigherRail(ANY));
  }

  @Test
  void twoDowelsAreNotAdvisedWhereThereAreTwo() throws Exception {
    JointRemedies two = of("joint.dowels=2", "timber.dowel.diameter=6", "joint.embedment=21");

    assertEquals(Optional.empty(), two.twoDowels(ANY));
    assertEquals(Optional.empty(), two.twoDowelsInAHigherRail(ANY));
    assertEquals(Optional.empty(), of().twoDowels(joint -> false));
    assertEquals(Optional.empty(), of().twoDowelsInAHigherRail(joint -> false));
  }

  /** 2 × (43 + 2) + 10 = 100: all of a rail of 100. */
  @ParameterizedTest
  @CsvSource({"30, 36", "36, 36", "40, 40", "43, 43", "44, 0"})
  void aDowelIsAdvisedAsDeepAsHoldsAndFits(int holding, int advised) throws Exception {
    assertEquals(
        advised == 0 ? Optional.empty() : Optional.of("joint.embedment=" + advised),
        of("rack.rail-length=100")
            .deeper(joint -> !joint.embedment().isLessThan(Length.mm(holding))));
  }

  /** In inches 1/2 goes 1 3/4 deep and takes a rail of three diameters, 1 1/2. */
  @ParameterizedTest
  @CsvSource({"1 1/2, true", "1 7/16, false"})
  void inchesAreReckonedAlike(String height, boolean fits) throws Exception {
    JointRemedies bulbs =
        JointRemedies.of(Designs.of(Told.BULBS, "timber.rails.section=1 1/2 x " + height).rack());

    assertEquals(
        fits
            ? Optional.of("timber.dowel.diameter=1/2 and joint.embedment=1-3/4")
            : Optional.empty(),
        bulbs.thickerDowel(ANY));
  }

  private static JointRemedies of(String... settings) throws Exception {
    return JointRemedies.of(Designs.of(STAND, settings).rack());
  }
}
