package org.slatwright.design.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Against statics reckoned by hand: moments about the edge of the feet. */
class TippingTest {

  /** 35 kg, 150 mm behind the edge: 35 · 9.80665 · 150 / 1500 = 34.323 N. */
  @Test
  void aPushAtTheTopTipsWhenItsMomentIsThatOfTheWeight() {
    assertEquals(34.32, Tipping.push(body(35).weight(), 150, 1500), 0.005);
  }

  /** atan(150 / 800) = 10.62°. */
  @Test
  void itTipsWhenItsCentreOfGravityStandsOverTheEdge() {
    assertEquals(10.62, Tipping.tilt(150, 800), 0.005);
    assertEquals(45, Tipping.tilt(500, 500), 1e-9);
    assertEquals(0, Tipping.tilt(0, 500), 1e-9);
  }

  /** A see-saw: a child of 27.2 kg 3 m out holds one of 40.8 kg 2 m out. */
  @Test
  void aPullDownBalancesAsOnASeeSaw() {
    assertEquals(27.2 * 9.80665, Tipping.pull(body(40.8).weight(), 2000, 3000), 1e-9);
  }

  /** The kilogram-force: 9.80665 N exactly, by the third CGPM of 1901. */
  @Test
  void aKilogramWeighsAKilogramForce() {
    assertEquals(9.80665, body(1).weight(), 1e-12);
  }

  /** Two on a bar: 3 kg and 1 kg, 400 mm apart, balance 100 mm from the heavier. */
  @Test
  void twoBodiesBalanceNearerTheHeavier() {
    PointMass both = new PointMass(3, 0, 10, 7).plus(new PointMass(1, 400, 10, 7));

    assertEquals(new PointMass(4, 100, 10, 7), both);
  }

  /**
   * The disc with a hole of every textbook: radius 2, a hole of radius 1 touching its rim and its
   * middle moves the centre of gravity by 1/3 to the other side.
   */
  @Test
  void aHoleMovesTheCentreOfGravityAway() {
    PointMass disc = new PointMass(4 * Math.PI, 0, 0, 0).plus(new PointMass(-Math.PI, 1, 0, 0));

    assertEquals(-1.0 / 3, disc.x(), 1e-12);
    assertEquals(3 * Math.PI, disc.kg(), 1e-12);
  }

  @Test
  void nothingAddsNothing() {
    PointMass one = new PointMass(2, 1, 2, 3);

    assertEquals(one, PointMass.NONE.plus(one));
    assertEquals(PointMass.NONE, one.plus(new PointMass(-2, 9, 9, 9)));
  }

  @Property
  void lengthenedByWhatIsMissingItJustStands(
      @ForAll @DoubleRange(min = 1, max = 1e6) double moment,
      @ForAll @DoubleRange(min = 1, max = 300) double kg,
      @ForAll @DoubleRange(min = 0, max = 1000) double lever,
      @ForAll @DoubleRange(min = 0, max = 0.1) double perMm) {
    double more = Tipping.lengthening(moment, kg, lever, perMm);
    double stands = (kg + perMm * more) * 9.80665 * (lever + more / 2);
    if (kg * 9.80665 * lever >= moment) {
      assertEquals(0, more);
    } else {
      assertEquals(1, stands / moment, 1e-9);
    }
  }

  @Property
  void shortenedByWhatIsTooMuchItJustStands(
      @ForAll @DoubleRange(min = 1, max = 200) double kg,
      @ForAll @DoubleRange(min = 100, max = 1000) double lever,
      @ForAll @DoubleRange(min = 1, max = 100) double reach) {
    double perMm = kg / (2 * (lever + reach));
    double force = 2 * kg * 9.80665;
    double less = Tipping.shortening(force, reach, kg, lever, perMm);
    double held = (kg - perMm * less) * 9.80665 * lever;
    if (kg * 9.80665 * lever >= force * reach) {
      assertEquals(0, less);
    } else {
      assertTrue(less > 0 && less < reach);
      assertEquals(1, held / (force * (reach - less)), 1e-9);
    }
  }

  private static PointMass body(double kg) {
    return new PointMass(kg, 0, 0, 0);
  }
}
