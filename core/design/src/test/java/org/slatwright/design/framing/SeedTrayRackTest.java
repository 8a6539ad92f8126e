package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthGrammar;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Bore;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Direction;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;

/**
 * The seed-tray rack of the examples, reckoned by hand in millimetres.
 *
 * <p>Heights: 4 shelves of 44 + 18 = 62, uprights 1500, foot 100, one opening of 380; the other two
 * share 1500 - 100 - 4 x 62 - 380 = 772, so 386 each. Rails stand at 100, 542, 990 and 1438.
 *
 * <p>Depth: 44 + 320 + 44 = 408. Slats: 3 x 95 + 2 x 17 = 319, 1 left behind. Width: 44 + 580 + 44
 * = 668. Dowels: 3 1/2 x 10 = 35 in the rail, 44 + 35 = 79 long, in holes 37 deep.
 */
class SeedTrayRackTest {

  private static Framed rack;

  @BeforeAll
  static void frame() throws Exception {
    rack = Framed.of(Files.readString(Path.of("../../examples/racks/seed-trays.yaml")));
  }

  @Test
  void theWholeRackIs668Wide408DeepAnd1500High() {
    assertEquals(box("0 0 0", "668 408 1500"), rack.assembly().extent());
  }

  @Test
  void uprightsStandAtTheFourCorners() {
    assertEquals(box("0 0 0", "44 44 1500"), rack.piece("U-1").box());
    assertEquals(box("0 364 0", "44 408 1500"), rack.piece("U-2").box());
    assertEquals(box("624 0 0", "668 44 1500"), rack.piece("U-3").box());
    assertEquals(box("624 364 0", "668 408 1500"), rack.piece("U-4").box());
  }

  @Test
  void uprightsTurnTheirFaceSidesOutwards() {
    assertEquals(Direction.MINUS_Y, rack.piece("U-1").placement().thickness());
    assertEquals(Direction.PLUS_Y, rack.piece("U-2").placement().thickness());
    assertEquals(
        new Placement(point("668 44 0"), Direction.PLUS_Z, Direction.MINUS_X),
        rack.piece("U-3").placement());
  }

  @Test
  void railsLieBetweenThemFromTheFloorUp() {
    assertEquals(box("0 44 100", "44 364 144"), rack.piece("R-1").box());
    assertEquals(box("0 44 542", "44 364 586"), rack.piece("R-2").box());
    assertEquals(box("0 44 990", "44 364 1034"), rack.piece("R-3").box());
    assertEquals(box("0 44 1438", "44 364 1482"), rack.piece("R-4").box());
    assertEquals(box("624 44 100", "668 364 144"), rack.piece("R-5").box());
  }

  @Test
  void slatsLieOnThemFromTheFront() {
    assertEquals(box("0 44 144", "668 139 162"), rack.piece("S-1").box());
    assertEquals(box("0 156 144", "668 251 162"), rack.piece("S-2").box());
    assertEquals(box("0 268 144", "668 363 162"), rack.piece("S-3").box());
    assertEquals(box("0 44 586", "668 139 604"), rack.piece("S-4").box());
    assertEquals(box("0 268 1482", "668 363 1500"), rack.piece("S-12").box());
  }

  @Test
  void dowelsReachFromTheOuterFacesIntoTheRails() {
    assertEquals(box("17 0 117", "27 79 127"), rack.piece("D-1").box());
    assertEquals(box("17 329 117", "27 408 127"), rack.piece("D-2").box());
    assertEquals(box("641 0 1455", "651 79 1465"), rack.piece("D-15").box());
  }

  @Test
  void anUprightIsDrilledThroughTheMiddleBehindEachRail() {
    List<Hole> holes = rack.piece("U-1").part().holes();

    assertEquals(
        List.of(
            hole("a", Face.FACE_SIDE, "122", "22", "44", true),
            hole("b", Face.FACE_SIDE, "564", "22", "44", true),
            hole("c", Face.FACE_SIDE, "1012", "22", "44", true),
            hole("d", Face.FACE_SIDE, "1460", "22", "44", true)),
        holes);
    assertEquals(
        new Bore(point("22 408 564"), Direction.MINUS_Y, mm("10"), mm("44")),
        rack.piece("U-2").bore(holes.get(1)));
  }

  @Test
  void aRailIsDrilledInTheMiddleOfBothEnds() {
    List<Hole> holes = rack.piece("R-1").part().holes();

    assertEquals(
        List.of(
            hole("a", Face.START_END, "22", "22", "37", false),
            hole("b", Face.FAR_END, "22", "22", "37", false)),
        holes);
    assertEquals(
        new Bore(point("646 364 122"), Direction.MINUS_Y, mm("10"), mm("37")),
        rack.piece("R-5").bore(holes.get(1)));
  }

  @Test
  void jointsNameTheirPieces() {
    Joint first = rack.assembly().joints().get(0);
    Joint last = rack.assembly().joints().get(15);

    assertEquals("J-1 U-1 R-1 D-1", words(first));
    assertEquals("J-16 U-4 R-8 D-16", words(last));
    assertEquals("d", last.pins().get(0).uprightHole().name());
    assertEquals("b", last.pins().get(0).railHole().name());
  }

  @Test
  void framesAndShelvesAreBuiltAsGroups() {
    assertEquals(
        List.of("frame-1", "frame-2", "shelf-1", "shelf-2", "shelf-3", "shelf-4"),
        rack.assembly().groups().stream().map(Group::id).toList());
    assertEquals(List.of("S-4", "S-5", "S-6"), rack.slats(1).stream().map(Piece::id).toList());
  }

  @Test
  void thereAreFourUprightsEightRailsTwelveSlatsAndSixteenDowels() {
    assertEquals(4, rack.assembly().pieces(Role.UPRIGHT).size());
    assertEquals(8, rack.assembly().pieces(Role.RAIL).size());
    assertEquals(12, rack.assembly().pieces(Role.SLAT).size());
    assertEquals(16, rack.assembly().pieces(Role.DOWEL).size());
  }

  /**
   * On the quarters of a slat, 23.75 and 71.25 from its front edge, and 8 beside the middle of the
   * rail: 5 of dowel, 0.6 of brad and 2 of wood, up to whole millimetres.
   */
  @Test
  void bradsStandBesideTheDowelsOnTheQuartersOfASlat() {
    List<Fastener> brads = rack.assembly().fasteners();

    assertEquals(4 * 3 * 2 * 2, brads.size());
    assertEquals(point("14 67.75 162"), brads.get(0).head());
    assertEquals(point("30 115.25 162"), brads.get(1).head());
    assertEquals(point("638 67.75 162"), brads.get(2).head());
    assertEquals(point("654 115.25 162"), brads.get(3).head());
    assertEquals(mm("45"), brads.get(0).length());
    assertEquals(mm("1.2"), brads.get(0).diameter());
    assertEquals(Direction.MINUS_Z, brads.get(0).inward());
    assertEquals("S-1", brads.get(3).through().id());
    assertEquals("R-5", brads.get(3).into().id());
  }

  private static String words(Joint joint) {
    return String.join(
        " ", joint.id(), joint.upright().id(), joint.rail().id(), joint.pins().get(0).dowel().id());
  }

  private static Hole hole(
      String name, Face face, String along, String across, String depth, boolean through) {
    return new Hole(name, face, mm(along), mm(across), mm("10"), mm(depth), through);
  }

  private static Box box(String low, String high) {
    return new Box(point(low), point(high));
  }

  private static Point3 point(String coordinates) {
    String[] each = coordinates.split(" ");
    return new Point3(mm(each[0]), mm(each[1]), mm(each[2]));
  }

  private static Length mm(String text) {
    return new LengthGrammar(Unit.MM).read(text).orElseThrow();
  }
}
