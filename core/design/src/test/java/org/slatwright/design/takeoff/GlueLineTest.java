package org.slatwright.design.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Glue at 150 g/m² on each of two faces: common practice, no source. Racks with so many joints that
 * a hole more or less is grams.
 */
class GlueLineTest {

  private static final double G_PER_MM2 = 2 * 150e-6;

  /**
   * Three frames of six shelves: 36 joints of 40 x 80 mm less two holes of 12 mm, and 42 + 40 mm of
   * each dowel all round.
   */
  @Test
  void twoDowelsAreGluedAllRoundAndTheirHolesLeftOut() {
    double joint = 40 * 80 + 2 * (Math.PI * 12 * 82 - Math.PI * 6 * 6);
    Taken taken =
        Taken.of(
            """
            slatwright: 1
            title: Herb drying rack
            timber:
              frame: { section: 40 x 40, species: ponderosa pine }
              rails: { section: 40 x 80 }
              slats: { section: 20 x 80 }
              dowel: { diameter: 12 }
            rack: { bays: 2, interior-width: 320, rail-length: 340, foot: 100,
                    openings: [ 150, 150, 150, 150, 150 ] }
            slats: { per-shelf: 4, gap: 4 }
            joint: { dowels: 2, embedment: 42 }
            """);

    assertEquals(36, taken.assembly().joints().size());
    assertEquals(Math.round(36 * joint * G_PER_MM2), taken.all().glue().grams());
    assertEquals(99, taken.all().glue().grams());
  }

  /** 18 joints of 1 1/2 x 1 1/2 in less a hole of 3/8, and 1 1/2 + 1 1/2 in of dowel all round. */
  @Test
  void inchesAreReckonedAlike() {
    double squareInches = 1.5 * 1.5 + Math.PI * 0.375 * 3 - Math.PI * 0.1875 * 0.1875;
    Taken taken =
        Taken.of(
            """
            slatwright: 1
            title: Bulb rack
            units: in
            timber:
              frame: { section: 1 1/2 x 1 1/2, species: douglas-fir }
              slats: { section: 3/4 x 2 1/2 }
              dowel: { diameter: 3/8 }
            rack: { bays: 2, interior-width: 24, rail-length: 13, foot: 4, openings: [ 10, 10 ] }
            slats: { per-shelf: 4, gap: 3/4 }
            joint: { dowels: 1, embedment: 1 1/2 }
            """);

    assertEquals(18, taken.assembly().joints().size());
    assertEquals(
        Math.round(18 * squareInches * 25.4 * 25.4 * G_PER_MM2), taken.all().glue().grams());
    assertEquals(20, taken.all().glue().grams());
  }
}
