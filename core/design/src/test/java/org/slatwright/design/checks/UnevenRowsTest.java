package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Mass;
import org.slatwright.design.framing.UnevenRack;
import org.slatwright.design.mechanics.Tipping;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/** Slats and rails under rows of slats that differ. */
class UnevenRowsTest {

  private final Rack rack = UnevenRack.make();
  private final SlatCase light = SlatCase.of(rack).withLoad(new Mass(10_000));
  private final SlatCase heavy = SlatCase.of(rack).withLoad(new Mass(20_000));

  @Test
  void theSlatsOfEachRowBearAllOfTheLoad() {
    for (ShelfRow row : rack.rows()) {
      assertEquals(10 * Tipping.GRAVITY, all(heavy, row) - all(light, row), 1e-9);
    }
  }

  @Test
  void noSlatBearsMoreForItsWidthThanTheOneThatIsReckoned() {
    double reckoned = (heavy.evenLoad() - light.evenLoad()) / 58;
    for (ShelfRow row : rack.rows()) {
      for (int i = 0; i < row.slats().size(); i++) {
        double more = heavy.evenLoad(row, i) - light.evenLoad(row, i);
        assertTrue(more / row.slats().get(i).width().inMm() <= reckoned + 1e-9);
      }
    }
    // (58 + 20) of (100 + 20) + (100 + 20) + (58 + 20)
    assertEquals(10 * Tipping.GRAVITY * 78 / 318, reckoned * 58, 1e-9);
  }

  @Test
  void anEndOfARailBearsAtLeastHalfOfItsShare() {
    RailCase rail = RailCase.of(rack);

    // both rails of the bay, their two ends, carry load and slats
    double quarter = rack.load().kg() * Tipping.GRAVITY / 4;
    assertTrue(rail.endForce() >= quarter);
  }

  private static double all(SlatCase slat, ShelfRow row) {
    return IntStream.range(0, row.slats().size()).mapToDouble(i -> slat.evenLoad(row, i)).sum();
  }
}
