package org.slatwright.design.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.wood.Climate;
import org.slatwright.design.wood.Species;

class TakeOffTest {

  /** One shelf, so that every number below can be reckoned by hand. */
  private static final String STOOL =
      """
      slatwright: 1
      title: Stool for a watering can
      timber:
        frame: { section: 40 x 40, species: ponderosa pine }
        slats: { section: 20 x 80 }
        dowel: { diameter: 10 }
      rack: { interior-width: 320, rail-length: 340, foot: 300, openings: [] }
      slats: { per-shelf: 4, gap: 4 }
      joint: { dowels: 1, embedment: 40, fixing: { kind: brad, per-end: 2 } }
      """;

  private static final Taken TAKEN = Taken.of(STOOL);

  /** Wood Handbook (FPL-GTR-282), chapter 4: G 0.40 at 12 % moisture is 448 kg/m³. */
  @Test
  void woodWeighsWhatTheWoodHandbookSays() {
    Species pine = species("ponderosa pine");

    assertEquals(448, pine.density(12), 1e-9);
    assertEquals(9.5, Climate.INDOORS.usual(), 1e-9, "between 7 and 12 %");
    assertEquals(438, pine.density(Climate.INDOORS.usual()), 1e-9);
  }

  /** 400 x 80 x 20 mm = 640 cm³, at 438 kg/m³. */
  @Test
  void aSlatWeighsItsVolume() {
    assertEquals(new Mass(280), TAKEN.each("S"));
  }

  /** 360 x 40 x 40 mm less a hole of 10 mm right through: 576 000 - 3142 mm³, at 438 kg/m³. */
  @Test
  void theHolesAreTakenOffAnUpright() {
    assertEquals(new Mass(Math.round((576_000 - 78.5398 * 40) * 438e-6)), TAKEN.each("U"));
  }

  /** 340 x 40 x 40 mm less a blind hole at each end. */
  @Test
  void theHolesAreTakenOffARail() {
    double deep = TAKEN.rack().joint().holeDepth().inMm();
    assertTrue(deep >= 40, "embedment at least");

    assertEquals(new Mass(Math.round((544_000 - 2 * 78.5398 * deep) * 438e-6)), TAKEN.each("R"));
  }

  /** 10 mm thick and 80 mm long, beech of G 0.63 at 9.5 %: 6283 mm³ at 690 kg/m³. */
  @Test
  void dowelsAreWeighedAsBeech() {
    assertEquals(new Mass(4), TAKEN.each("D"));
    assertEquals(689.85, species("european beech").density(9.5), 0.01);
  }

  @Test
  void theRackWeighsAllItsPieces() {
    double deep = TAKEN.rack().joint().holeDepth().inMm();
    double uprights = 4 * (576_000 - 78.5398 * 40);
    double rails = 2 * (544_000 - 2 * 78.5398 * deep);
    double slats = 4 * 640_000.0;
    double grams = (uprights + rails + slats) * 438e-6 + 4 * 6283.19 * 689.85e-6;

    assertEquals(grams, TAKEN.all().mass().grams(), 0.6);
  }

  /** Left and right alike, front and back alike: half of 400 and of 420 mm. */
  @Test
  void aSymmetricRackBalancesInItsMiddle() {
    Point3 centre = TAKEN.all().centreOfGravity();

    assertEquals(Length.mm(200), centre.x());
    assertEquals(Length.mm(210), centre.y());
  }

  /**
   * Uprights balance 180 mm up, rails 320, slats 350; holes and dowels lie at the rails' middle.
   */
  @Test
  void itBalancesAsHighAsItsPiecesDoTogether() {
    double deep = TAKEN.rack().joint().holeDepth().inMm();
    double pine =
        4 * 576_000.0 * 180
            + 2 * 544_000.0 * 320
            + 4 * 640_000.0 * 350
            - 4 * 78.5398 * (40 + deep) * 320;
    double moment = pine * 438e-6 + 4 * 6283.19 * 689.85e-6 * 320;

    assertEquals(
        moment / TAKEN.all().mass().grams(), TAKEN.all().centreOfGravity().z().inMm(), 0.1);
    assertTrue(
        TAKEN.all().centreOfGravity().z().isMultipleOf(Length.mm(1).dividedBy(10)), "to 0.1 mm");
  }

  /** All faces, less each side of every contact: 4 rail ends of 40 x 40, 8 bearings of 40 x 80. */
  @Test
  void thePartsThatTouchTakeNoFinish() {
    int uprights = 4 * (2 * 40 * 40 + 4 * 40 * 360);
    int rails = 2 * (2 * 40 * 40 + 4 * 40 * 340);
    int slats = 4 * 2 * (400 * 80 + 400 * 20 + 80 * 20);
    int hidden = 2 * (4 * 40 * 40 + 8 * 40 * 80);

    assertEquals(uprights + rails + slats - hidden, TAKEN.all().finishArea().squareMillimetres());
  }

  /**
   * At 150 g/m² on each face (common practice, no source): four joints of 40 x 40 less 10 round,
   * and 80 mm of dowel all round.
   */
  @Test
  void glueGoesOnBothFacesOfEveryJoint() {
    double joint = 1600 - 78.5398 + Math.PI * 10 * 80;

    assertEquals(4 * joint * 2 * 150e-6, TAKEN.all().glue().grams(), 0.5);
  }

  @Test
  void dowelsRodAndFixingsAreCounted() {
    assertEquals(4, TAKEN.all().dowels());
    assertEquals(Length.mm(4 * 80), TAKEN.all().dowelRod());
    assertEquals(4 * 2 * 2, TAKEN.all().fixings(), "two at each of two bearings of four slats");
  }

  @Test
  void woodOutdoorsIsHeavier() {
    Taken wet = Taken.of(STOOL + "load: { climate: outdoors }\n");

    assertEquals(
        1.17 / 1.095, wet.all().mass().kg() / TAKEN.all().mass().kg(), 1e-3, "17 % to 9.5 %");
  }

  @Property(tries = 40)
  void theFinishAreaIsThatOfACountCellByCell(@ForAll("racks") Taken taken) {
    List<Box> bars =
        taken.assembly().pieces().stream()
            .filter(piece -> piece.part().role() != Role.DOWEL)
            .map(Piece::box)
            .toList();

    assertEquals(
        ByGrid.squareMillimetres(bars), taken.all().finishArea().squareMillimetres(), 0.51);
  }

  @Property(tries = 40)
  void thePartsWeighAsMuchAsTheRack(@ForAll("racks") Taken taken) {
    List<Part> listed = taken.all().parts().stream().map(Quantities.PartMass::part).toList();
    assertEquals(taken.assembly().parts(), listed);
    long sum =
        taken.all().parts().stream().mapToLong(p -> p.each().grams() * p.part().quantity()).sum();
    int pieces = taken.assembly().pieces().size();

    assertEquals(sum, taken.all().mass().grams(), 0.5 * pieces + 1, "half a gram a piece");
  }

  @Property(tries = 40)
  void theCentreOfGravityLiesWithinTheFeet(@ForAll("racks") Taken taken) {
    Point3 centre = taken.all().centreOfGravity();
    Box extent = taken.assembly().extent();
    double tenth = 0.1;

    assertEquals(extent.high().x().inMm() / 2, centre.x().inMm(), tenth, "left as right");
    assertTrue(centre.y().isPositive() && centre.y().isLessThan(extent.high().y()));
    assertTrue(centre.z().isPositive() && centre.z().isLessThan(extent.high().z()));
  }

  @Property(tries = 40)
  void everyDowelAndFixingIsCounted(@ForAll("racks") Taken taken) {
    Quantities all = taken.all();
    assertTrue(all.mass().grams() > 0 && all.glue().grams() > 0);
    Length rod = taken.rack().joint().length().times(all.dowels());
    assertEquals(rod, all.dowelRod());
    assertEquals(taken.assembly().fasteners().size(), all.fixings());
  }

  @Provide
  Arbitrary<Taken> racks() {
    return Taken.any();
  }

  private static Species species(String name) {
    return Species.all().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }
}
