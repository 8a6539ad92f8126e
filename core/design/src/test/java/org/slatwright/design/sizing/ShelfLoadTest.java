package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.sizing.Solving.solve;

import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Finding;

/** Domestic shelves are tested with about 0.65 kg/dm²: EN 14749, from memory. */
class ShelfLoadTest {

  private static final String ORCHIDS =
      """
      slatwright: 1
      title: Rack for orchids
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
      rack: { interior-width: 580, rail-length: 320, openings: [ 300 ] }
      """;

  /** 5.80 x 3.20 dm at 0.65 kg/dm²: 12.06 kg. */
  @Test
  void aShelfIsReckonedWithWhatOneOfItsSizeIsTestedWithInWholeKilograms() throws Exception {
    Rack rack = solve(ORCHIDS);

    assertEquals(new Mass(12_000), rack.load());
    assertTrue(note(rack).message().startsWith("reckoned with 12 kg on each shelf"));
    assertTrue(note(rack).advice().contains("load.per-shelf"));
  }

  /** Twice 12.06 kg: every bay counts. */
  @Test
  void theLoadIsThatOfAllBays() throws Exception {
    assertEquals(new Mass(24_000), solve(ORCHIDS, "rack.bays=2").load());
  }

  /** 26 x 16 in are 26.838 dm²: 17.445 kg, 38.46 lb; 38 lb of 453.59237 g are 17 236.5 g. */
  @Test
  void inAnInchFileItIsWholePounds() throws Exception {
    String inch =
        ORCHIDS
            .replace("timber:", "units: in\ntimber:")
            .replace("44 x 44", "1 1/2 x 1 1/2")
            .replace("18 x 95", "3/4 x 3 1/2")
            .replace("580", "26")
            .replace("320", "16")
            .replace("300", "10");
    Rack rack = solve(inch);

    assertEquals(new Mass(17_237), rack.load());
    assertEquals("38 lb", rack.load().withUnit(Unit.INCH));
  }

  @Test
  void theSmallestShelfStillCarriesAKilogram() throws Exception {
    Rack rack = solve(ORCHIDS, "rack.interior-width=100", "rack.rail-length=100");

    assertEquals(new Mass(1000), rack.load());
  }

  @Test
  void aLoadThatIsGivenStandsAndNothingIsNoted() throws Exception {
    Rack rack = solve(ORCHIDS, "load.per-shelf=7.5 kg");

    assertEquals(new Mass(7500), rack.load());
    assertTrue(rack.notes().stream().noneMatch(note -> note.subject().equals("load.per-shelf")));
  }

  private static Finding note(Rack rack) {
    return rack.notes().stream()
        .filter(note -> note.subject().equals("load.per-shelf"))
        .findFirst()
        .orElseThrow();
  }
}
