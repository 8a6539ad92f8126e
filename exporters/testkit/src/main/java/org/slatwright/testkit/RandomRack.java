package org.slatwright.testkit;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** Racks of any size that can be built; the same for the same seed. */
final class RandomRack {

  private static final List<String> SECTIONS = List.of("38 x 38", "44 x 44", "37.6 x 37.9");
  private static final List<Integer> DOWELS = List.of(8, 10, 12);

  private final Random random;

  private RandomRack(long seed) {
    this.random = new Random(seed);
  }

  static Plan plan(long seed, Unit units, Paper paper) {
    RandomRack rack = new RandomRack(seed);
    for (int tries = 0; tries < 100; tries++) {
      try {
        byte[] file = rack.file(units, paper).getBytes(StandardCharsets.UTF_8);
        return Planner.plan(RackFileReader.read(file, "random.yaml", List.of()));
      } catch (RackFileException e) {
        // Cannot be built; the next one may.
      }
    }
    throw new IllegalStateException("no rack of seed " + seed + " can be built");
  }

  private String file(Unit units, Paper paper) {
    return String.join(
        "\n",
        "slatwright: 1",
        "title: Random rack",
        "units: " + units.metricOrInch("mm", "in"),
        "timber:",
        "  frame: { section: " + in(SECTIONS.get(random.nextInt(3))) + " }",
        "  slats: { section: " + in("18 x " + between(60, 100)) + " }",
        "  dowel: { diameter: " + DOWELS.get(random.nextInt(3)) + " mm }",
        "rack:",
        "  bays: " + between(1, 2),
        "  interior-width: " + between(350, 800) + " mm",
        "  rail-length: " + between(220, 500) + " mm",
        "  foot: " + between(60, 150) + " mm",
        "  openings: [ { clear: " + between(200, 450) + " mm, count: " + between(1, 4) + " } ]",
        "shop: { paper: " + paper.word() + " }",
        "");
  }

  private static String in(String section) {
    return section.replace(" x ", " mm x ") + " mm";
  }

  private int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }
}
