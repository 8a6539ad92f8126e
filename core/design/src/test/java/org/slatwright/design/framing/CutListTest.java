package org.slatwright.design.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CutLine;

class CutListTest {

  private static final String MUSHROOM_RACK =
      """
      slatwright: 1
      title: Mushroom-growing rack
      timber:
        frame: { section: 44 x 60, species: larch }
        slats: { section: 18 x 95 }
        dowel: { diameter: 10 }
      rack:
        bays: 3
        interior-width: 580
        rail-length: 320
        upright: 1500
      slats: { per-shelf: 3 }
      """;

  @Test
  void everyPartIsALineInTheOrderOfThePartsList() throws Exception {
    assertEquals(
        List.of("8 U 1500 mm", "8 R 320 mm", "6 S 1916 mm", "16 D 95 mm"),
        lines(MUSHROOM_RACK).stream().map(CutListTest::whatToCut).toList());
  }

  /** A bay at either end takes 44 + 580 + 22 = 646, the one between them 22 + 580 + 22 = 624. */
  @Test
  void slatsOfDifferentLengthAreDifferentParts() throws Exception {
    assertEquals(
        List.of("12 S1 646 mm", "6 S2 624 mm"),
        lines(MUSHROOM_RACK, "slats.run=per-bay").stream()
            .map(CutListTest::whatToCut)
            .filter(line -> line.contains("S"))
            .toList());
  }

  @Test
  void sectionsReadAsTheRackFileStatesThem() throws Exception {
    assertEquals(
        List.of(
            "larch, frame stock 44 × 60 mm",
            "larch, frame stock 44 × 60 mm",
            "larch, slat stock 18 × 95 mm",
            "hardwood, dowel rod 10 mm"),
        lines(MUSHROOM_RACK).stream().map(CutLine::timber).toList());
  }

  @Test
  void railsOfOtherStockSaySo() throws Exception {
    assertEquals(
        "larch, rail stock 38 × 70 mm",
        lines(MUSHROOM_RACK, "timber.rails.section=38x70").get(1).timber());
  }

  /** American Softwood Lumber Standard PS 20: a dry 2x4 is dressed to 1 1/2 x 3 1/2 in. */
  @Test
  void inchPlansReadInFractions() throws Exception {
    List<CutLine> lines =
        lines(
            """
            slatwright: 1
            title: Potting-bench shelves
            units: in
            timber:
              frame: { section: 1 1/2 x 3 1/2, species: douglas-fir }
              slats: { section: 3/4 x 3 1/2 }
              dowel: { diameter: 1/2 }
            rack: { interior-width: 26, rail-length: 16, upright: 48 }
            slats: { per-shelf: 4 }
            """);

    assertEquals(
        List.of(
            "douglas-fir, frame stock 1 1/2\" × 3 1/2\"",
            "douglas-fir, frame stock 1 1/2\" × 3 1/2\"",
            "douglas-fir, slat stock 3/4\" × 3 1/2\"",
            "hardwood, dowel rod 1/2\""),
        lines.stream().map(CutLine::timber).toList());
  }

  @Test
  void eachLineSaysWhatToMind() throws Exception {
    assertEquals(
        List.of(
            "all at one stop-block setting; 2 dowel holes through the face side",
            "all at one stop-block setting; ends square, they are glued",
            "ease the edges",
            "chamfer the end that goes in"),
        lines(MUSHROOM_RACK).stream().map(CutLine::note).toList());
  }

  @Test
  void aSingleDowelHoleReadsAsOne() throws Exception {
    CutLine upright = lines(MUSHROOM_RACK, "rack.openings=[]").get(0);

    assertEquals(
        "all at one stop-block setting; 1 dowel hole through the face side", upright.note());
  }

  private static List<CutLine> lines(String yaml, String... settings) throws Exception {
    Framed framed = Framed.of(yaml, settings);
    return CutList.of(framed.assembly(), new LengthFormat(framed.rack().units()));
  }

  private static String whatToCut(CutLine line) {
    return line.part().quantity() + " " + line.part().mark() + " " + line.part().shape().length();
  }
}
