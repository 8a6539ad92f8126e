package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.testkit.SamplePlans;

class FitTextTest {

  private static final String RACK =
      """
      slatwright: 1
      title: Seed-tray rack
      holds:
        - { name: seed tray, width: 285, depth: 545, height: 60, clearance: 12 }
        - { name: pot, width: 200, depth: 300, height: 200, across: 3, lie: either-way }
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 95 }
      rack: { interior-width: 640, rail-length: 620, openings: [ 400, 400, 50 ] }
      """;

  @Test
  void whatASampleHoldsIsToldShelfByShelf() {
    assertEquals(
        List.of(
            "jar, \"tall\"  shelf 1: turned, 3 across, 2 deep, 1 high; 12, 4 and 30 mm to spare",
            "             shelf 2: does not fit, 15 mm too wide"),
        FitText.of(SamplePlans.everyKind()));
  }

  @Test
  void shelvesThatTakeAThingAlikeShareALine() throws Exception {
    // seed tray: 640 - 606, 620 - 569, 400 - 372, 72 - 50; pot: 640 - 600, 620 - 600
    assertEquals(
        List.of(
            "seed tray  shelves 1 and 2: 2 across, 1 deep, 6 high; 34, 51 and 28 mm to spare",
            "           shelf 3: does not fit, 22 mm too high",
            "           shelf 4: 2 across, 1 deep, open above; 34 and 51 mm to spare",
            "pot        shelves 1 and 2: 3 across, 2 deep, 2 high; 40, 20 and 0 mm to spare",
            "           shelf 3: does not fit, 150 mm too high",
            "           shelf 4: 3 across, 2 deep, open above; 40 and 20 mm to spare"),
        FitText.of(plan()));
  }

  @Test
  void fewerThanAskedForIsSaid() throws Exception {
    assertTrue(
        String.join(" ", FitText.of(plan("rack.interior-width=590", "holds[1].lie=as-given")))
            .replaceAll(" +", " ")
            .contains("open above; 190 and 20 mm to spare; fewer than asked for"));
  }

  @Test
  void everyExampleFitsATerminal() {
    for (Plan plan : SamplePlans.examples()) {
      FitText.of(plan).forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }

  @Test
  void aLongNameHasALineOfItsOwn() throws Exception {
    String name = "a crate of the old kind with rope handles";
    List<String> lines = FitText.of(plan("holds[0].name=" + name));

    assertEquals(name, lines.get(0));
    assertTrue(lines.get(1).startsWith("     shelves 1 and 2: "), lines.get(1));
  }

  private static Plan plan(String... settings) throws RackFileException {
    return Planner.plan(
        RackFileReader.read(RACK.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of(settings)));
  }
}
