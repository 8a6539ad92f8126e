package org.slatwright.benchmarks;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** The racks that are measured: as little as a rack can be, and more than most workshops hold. */
public enum BenchmarkRack {
  /** Two shelves of one slat, in one bay. */
  SMALLEST(2, 1, 1, "through"),
  /** Twenty shelves, all of different heights, in six bays of five slats each. */
  LARGE(20, 6, 5, "per-bay");

  private final int shelves;
  private final int bays;
  private final int slats;
  private final String run;

  BenchmarkRack(int shelves, int bays, int slats, String run) {
    this.shelves = shelves;
    this.bays = bays;
    this.slats = slats;
    this.run = run;
  }

  /** How many shelves it has. */
  public int shelves() {
    return shelves;
  }

  /** How many slats all its shelves have. */
  public int slats() {
    return run.equals("through") ? shelves * slats : shelves * bays * slats;
  }

  /** Its rack file. */
  public byte[] rackFile() {
    return rackFile(shelves, bays, slats, run);
  }

  /**
   * The rack file of so many shelves, all of different heights.
   *
   * @param slats a shelf and bay, or a shelf alone where they run through all bays
   */
  static byte[] rackFile(int shelves, int bays, int slats, String run) {
    return """
        slatwright: 1
        title: Propagation rack
        timber:
          frame:
            section: 44 x 44
            species: norway spruce
            lengths:
              - { length: 2400, price: 5.90 }
              - { length: 4800, price: 12.20 }
          slats:
            section: 18 x 70
            lengths:
              - { length: 2400, price: 3.60 }
          dowel: { diameter: 10, rod-length: 1000 }
        rack:
          bays: %s
          interior-width: 560
          rail-length: 400
          openings:
        %s
        slats:
          per-shelf: %s
          run: %s
        """
        .formatted(bays, openings(shelves), slats, run)
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String openings(int shelves) {
    return IntStream.range(1, shelves)
        .mapToObj(opening -> "    - " + (100 + opening))
        .collect(Collectors.joining("\n"));
  }

  /** Its plan. */
  public Plan plan() throws RackFileException {
    return Planner.plan(RackFileReader.read(rackFile(), "rack.yaml", List.of()));
  }
}
