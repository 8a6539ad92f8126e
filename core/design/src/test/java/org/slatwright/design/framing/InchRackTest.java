package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Point3;

/**
 * A rack of dressed lumber, reckoned by hand in inches. American Softwood Lumber Standard PS 20,
 * minimum dressed sizes, dry: a 2x2 is 1 1/2 x 1 1/2 in, a 1x4 is 3/4 x 3 1/2 in.
 *
 * <p>Heights: 5 + 5 x (1 1/2 + 3/4 + 8 1/4) + 1 1/2 + 3/4 + 2 = 61 3/4. Slats: 4 x 3 1/2 + 3 x 3/8
 * = 15 1/8 of 16, and half of the 7/8 left is 7/16. Width: 26 + 2 x 1 1/2 = 29. Dowels: 3 1/2 x 1/2
 * = 1 3/4 in the rail, 3 1/4 long, in holes 1 13/16 deep.
 */
class InchRackTest {

  private static final LengthFormat INCHES = new LengthFormat(Unit.INCH);

  private static Framed rack;

  @BeforeAll
  static void frame() throws Exception {
    rack =
        Framed.of(
            """
            slatwright: 1
            title: Shelves for ware boards
            units: in
            timber:
              frame: { section: 1 1/2 x 1 1/2, species: douglas-fir }
              slats: { section: 3/4 x 3 1/2 }
              dowel: { diameter: 1/2 }
            rack:
              interior-width: 26
              rail-length: 16
              foot: 5
              openings: [ { clear: 8 1/4, count: 5 } ]
              top: 2
            slats: { gap: 3/8 }
            """);
  }

  @Test
  void theWholeRackIs29Wide19DeepAnd61ThreeQuartersHigh() {
    Box extent = rack.assembly().extent();

    assertEquals("29", inches(extent.size(Axis.X)));
    assertEquals("19", inches(extent.size(Axis.Y)));
    assertEquals("61 3/4", inches(extent.size(Axis.Z)));
  }

  @Test
  void railsStandTenAndAHalfApart() {
    assertEquals(
        List.of("5", "15 1/2", "26", "36 1/2", "47", "57 1/2"),
        rack.rails(0).stream().map(rail -> inches(rail.box().low().z())).toList());
    assertEquals("0, 1 1/2, 5 to 1 1/2, 17 1/2, 6 1/2", inches(rack.piece("R-1").box()));
  }

  @Test
  void fourSlatsLieOnEachShelf() {
    assertEquals(
        List.of("1 15/16", "5 13/16", "9 11/16", "13 9/16"),
        rack.slats(0).stream().map(slat -> inches(slat.box().low().y())).toList());
    assertEquals("0, 1 15/16, 6 1/2 to 29, 5 7/16, 7 1/4", inches(rack.piece("S-1").box()));
  }

  @Test
  void uprightsAreDrilledInTheMiddleThreeQuartersAboveEachUnderside() {
    List<Hole> holes = rack.piece("U-1").part().holes();

    assertEquals(
        List.of("5 3/4", "16 1/4", "26 3/4", "37 1/4", "47 3/4", "58 1/4"),
        holes.stream().map(hole -> inches(hole.along())).toList());
    assertEquals("3/4", inches(holes.get(0).across()));
  }

  @Test
  void dowelsReachOneAndThreeQuartersIntoTheRails() {
    assertEquals("1/2, 0, 5 1/2 to 1, 3 1/4, 6", inches(rack.piece("D-1").box()));
    assertEquals("1 13/16", inches(rack.piece("R-1").part().hole("a").depth()));
  }

  /** 1/4 + 3/128 + 2 mm is 0.352, so 3/8 beside the middle; a quarter of a slat is 7/8. */
  @Test
  void bradsAreTwoInchesAndStandThreeEighthsBesideTheMiddle() {
    assertEquals("2", inches(rack.assembly().fasteners().get(0).length()));
    assertEquals("3/8, 2 13/16, 7 1/4", inches(rack.assembly().fasteners().get(0).head()));
    assertEquals("1 1/8, 4 9/16, 7 1/4", inches(rack.assembly().fasteners().get(1).head()));
  }

  private static String inches(Box box) {
    return inches(box.low()) + " to " + inches(box.high());
  }

  private static String inches(Point3 point) {
    return inches(point.x()) + ", " + inches(point.y()) + ", " + inches(point.z());
  }

  private static String inches(Length length) {
    return INCHES.number(length);
  }
}
