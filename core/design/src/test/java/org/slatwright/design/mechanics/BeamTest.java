package org.slatwright.design.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the Wood Handbook, FPL-GTR-282 (2021), chapter 9. */
class BeamTest {

  private static final double TEN_KILOGRAMS = 98.0665;

  /** A slat of ponderosa pine lying flat: E 8900 MPa (Wood Handbook, table 5-3a). */
  private static final Beam SLAT = new Beam(new RectangularSection(89, 19), 600, 8900);

  /** Equations 9-2 to 9-4 worked out by hand. */
  @Test
  void aSlatUnderTenKilogramsSagsAsWorkedOutByHand() {
    assertEquals(50_870.9, SLAT.section().inertia(), 0.05);
    assertEquals(0.60919 + 0.00938, SLAT.deflection(Loading.UNIFORM, TEN_KILOGRAMS), 0.00001);
    assertEquals(0.97471 + 0.01877, SLAT.deflection(Loading.CENTRE, TEN_KILOGRAMS), 0.00001);
    assertEquals(1.3735, SLAT.stress(Loading.UNIFORM, TEN_KILOGRAMS), 0.00005);
    assertEquals(2.7470, SLAT.stress(Loading.CENTRE, TEN_KILOGRAMS), 0.00005);
  }

  /** Rows of table 9-1: k_b as a fraction, k_s as a fraction. */
  @ParameterizedTest
  @CsvSource({"UNIFORM, 5, 384, 1, 8", "CENTRE, 1, 48, 1, 4", "UNIFORM_CANTILEVER, 1, 8, 1, 2"})
  void deflectionFollowsTheTable(
      Loading loading, double bending, double over, double shear, double under) {
    for (Beam beam : List.of(SLAT, new Beam(new RectangularSection(44, 44), 90, 11_000))) {
      assertEquals(
          byTheTable(beam, bending / over, shear / under),
          beam.deflection(loading, TEN_KILOGRAMS),
          1e-9);
    }
  }

  /** The row of table 9-1 for two loads at the quarter points: 11/768 and 1/8. */
  @Test
  void twoLoadsAtTheQuarterPointsFollowTheTable() {
    PointLoaded slat =
        new PointLoaded(
            SLAT,
            List.of(new PointLoad(150, TEN_KILOGRAMS / 2), new PointLoad(450, TEN_KILOGRAMS / 2)));

    assertEquals(byTheTable(SLAT, 11.0 / 768, 1.0 / 8), slat.sagInTheMiddle(), 1e-9);
  }

  /** EN 1995-1-1, 2.2.3 and table 3.2, ψ2 of EN 1990, category E: values from memory. */
  @ParameterizedTest
  @CsvSource({"0.60, 1.48", "0.80, 1.64", "2.00, 2.60"})
  void storedGoodsMakeWoodCreepAsTheServiceClassSays(double kDef, double factor) {
    assertEquals(factor, Creep.factor(kDef), 1e-12);
  }

  private static double byTheTable(Beam beam, double bending, double shear) {
    double b = beam.section().breadth();
    double h = beam.section().depth();
    double l = beam.length();
    double inertia = b * h * h * h / 12;
    double shearModulus = beam.stiffness() / 16;
    return bending * TEN_KILOGRAMS * l * l * l / (beam.stiffness() * inertia)
        + shear * TEN_KILOGRAMS * l / (shearModulus * b * h * 5 / 6);
  }
}
