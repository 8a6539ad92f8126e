package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.design.checks.Measure.Compared;

class MeasureTest {

  private static final Figures MM = new Figures(new LengthFormat(Unit.MM));
  private static final Figures INCH = new Figures(new LengthFormat(Unit.INCH));

  /** 1 in is 25.4 mm, 1 lbf 4.4482216152605 N: NIST SP 811, B.8, as all that follows. */
  private static final double LBF = 4.4482216152605;

  @Test
  void aLimitThatIsMissedNeverLooksMet() {
    assertEquals(new Compared("9.96°", "10°"), MM.angle().compare(9.963, 10));
    assertEquals(new Compared("92.4 N", "92.2 N"), MM.force().compare(92.4, 92.2));
    assertEquals(new Compared("134.6 N", "135.4 N"), MM.force().compare(134.6, 135.4));
    assertEquals(new Compared("4.01", "4"), MM.ratio().compare(4.012, 4));
    assertEquals(new Compared("685.6 mm", "685.8 mm"), MM.measured().compare(685.6, 685.8));
    assertEquals(new Compared("92 N", "89 N"), MM.force().compare(92.4, 88.964));
    assertEquals(new Compared("89 N", "89 N"), MM.force().compare(88.964, 88.964), "met exactly");
  }

  /** 1.5 × 4.1 = 6.15, and 27/64 in is 10.715625 mm: exact halves of the last digit told. */
  @Test
  void aHalfIsRoundedUpThoughItIsReckonedAHairUnder() {
    assertEquals("6.2 mm", MM.measured().told(1.5 * 4.1));
    assertEquals("18 mm", MM.measured().told(17.499_999_999_9));
    assertEquals(INCH.measured().told(10.715625, 4), INCH.measured().told(10.715_624_999_999, 4));
  }

  @Property
  void whatIsTenThousandthsApartIsToldApart(
      @ForAll @IntRange(min = 10, max = 9000) int limit,
      @ForAll @IntRange(min = 1, max = 9999) int tenThousandths) {
    double value = limit * (1 + tenThousandths / 10_000.0);
    for (Measure measure : new Measure[] {MM.force(), INCH.stress(), MM.distance(), MM.moment()}) {
      Compared told = measure.compare(value, limit);
      assertNotEquals(told.value(), told.limit());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 N",
    "0.4, under 1 N",
    "88.964, 89 N",
    "135.4, 135 N",
    "1278, 1280 N",
    "9999.9, 10 kN",
    "32072, 32 kN"
  })
  void aForceHasNoMoreDigitsThanItDeserves(double newtons, String told) {
    assertEquals(told, MM.force(newtons));
  }

  @Test
  void noiseIsToldAsLessThanSomething() {
    assertEquals("under 0.1 mm", MM.distance(0.0045));
    assertEquals("0.13 mm", MM.distance(0.13));
    assertEquals("under 0.01\"", INCH.distance(0.1));
    assertEquals("under 0.1 MPa", MM.stress().told(0.0089));
    assertEquals("under 10 psi", INCH.stress().told(0.0089));
    assertEquals("under 0.1 N·m", MM.moment().told(4));
    assertEquals("under 1 lbf", INCH.force(0.9 * LBF));
  }

  /** "at most under 0.1 MPa" says nothing. */
  @Test
  void aLimitIsNeverToldAsNoise() {
    assertEquals(new Compared("0.08 MPa", "0.05 MPa"), MM.stress().compare(0.08, 0.05));
    assertEquals(new Compared("under 0.1 MPa", "0.79 MPa"), MM.stress().compare(0.008, 0.79));
  }

  /** 2 5/16 in is 58.7375 mm, 1 1/4 in is 31.75 mm, 5/64 in is 1.984375 mm. */
  @Test
  void whatAMakerMeasuresIsToldAsARuleReads() {
    assertEquals(new Compared("1 1/4\"", "2 5/16\""), INCH.measured().compare(31.75, 58.9));
    assertEquals(new Compared("2 19/64\"", "2 5/16\""), INCH.measured().compare(58.4, 58.7375));
    assertEquals(new Compared("27 mm", "59 mm"), MM.measured().compare(26.6, 58.7));
    assertEquals("5/64\"", INCH.bit(2));
    assertEquals("1.6 mm", MM.bit(1.575));
    assertEquals("under 1/16\"", INCH.measured().told(0.5));
    assertEquals("0\"", INCH.measured().told(0));
  }

  @Property
  void aGreaterNumberIsNeverToldAsALesser(
      @ForAll @DoubleRange(min = 0.2, max = 9000) double less,
      @ForAll @DoubleRange(min = 1, max = 2) double times) {
    assertTrue(number(MM.distance(less)) <= number(MM.distance(less * times)));
  }

  private static double number(String told) {
    return Double.parseDouble(told.replace(" mm", ""));
  }
}
