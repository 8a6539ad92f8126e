package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.slatwright.api.model.Axis;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.mechanics.PointMass;
import org.slatwright.design.mechanics.Tipping;
import org.slatwright.design.sizing.RandomRacks;

/** What holds of the stability of every rack. */
class StabilityPropertyTest {

  /** Every size is given, so that each can be changed alone. */
  private static final String RACK =
      """
      slatwright: 1
      title: Rack for drying herbs
      units: %s
      timber:
        frame: { section: 40 mm x 40 mm, species: scots pine }
        slats: { section: 20 mm x 80 mm }
      rack: { interior-width: %s mm, rail-length: %s mm, foot: 100 mm, top: flush,
        openings: [ { clear: %s mm, count: 3 } ] }
      slats: { per-shelf: 2, gap-range: 3..9999 }
      load: { per-shelf: %s kg }
      """;

  @Property(tries = 40)
  void theAnchorIsAlwaysAdvised(@ForAll("racks") Standing rack) {
    assertEquals(1, rack.findings().stream().filter(f -> f.rule().equals("anchor")).count());
    boolean warned = rack.findings().stream().anyMatch(f -> f.severity() != Finding.Severity.NOTE);
    assertEquals(warned, rack.severity("anchor") == Finding.Severity.WARNING);
  }

  @Property(tries = 40)
  void nothingThatCanBeAnchoredIsAnError(@ForAll("racks") Standing rack) {
    assertTrue(rack.findings().stream().noneMatch(f -> f.severity() == Finding.Severity.ERROR));
  }

  @Property(tries = 40)
  void everyLimitPassedSaysWhatToDo(@ForAll("racks") Standing rack) {
    assertTrue(
        rack.findings().stream()
            .allMatch(f -> f.severity() == Finding.Severity.NOTE || !f.advice().isEmpty()));
  }

  /** The claim that the rules for an empty rack rest on. */
  @Property(tries = 40)
  void noLoadMakesItEasierToPushOver(@ForAll("racks") Standing rack) {
    Stance stance = rack.stance();
    for (Way way : Way.values()) {
      double empty = moment(stance, way, stance.empty());
      stance
          .topHeavy()
          .forEach(loading -> assertTrue(moment(stance, way, loading.all()) >= empty - 1e-6));
    }
  }

  @Property(tries = 60)
  void aHeavierLoadNeverMakesAFindingMilder(
      @ForAll @IntRange(min = 200, max = 900) int width,
      @ForAll @IntRange(min = 180, max = 600) int rail,
      @ForAll @IntRange(min = 60, max = 500) int clear,
      @ForAll @IntRange(min = 1, max = 80) int load,
      @ForAll @IntRange(min = 0, max = 80) int more) {
    Standing light = Standing.of(RACK.formatted("mm", width, rail, clear, load));
    Standing heavy = Standing.of(RACK.formatted("mm", width, rail, clear, load + more));

    assertEquals(light.findings().size(), heavy.findings().size());
    for (Finding before : light.findings()) {
      Finding after = heavy.finding(before.rule());
      assertTrue(after.severity().compareTo(before.severity()) <= 0, before + " " + after);
    }
    assertTrue(leastLean(heavy) <= leastLean(light) + 1e-9);
  }

  @Property(tries = 60)
  void aHigherRackIsNeverSteadier(
      @ForAll @IntRange(min = 180, max = 600) int rail,
      @ForAll @IntRange(min = 60, max = 500) int clear,
      @ForAll @IntRange(min = 1, max = 200) int higher,
      @ForAll @IntRange(min = 1, max = 40) int load) {
    Standing low = Standing.of(RACK.formatted("mm", 500, rail, clear, load));
    Standing high = Standing.of(RACK.formatted("mm", 500, rail, clear + higher, load));

    assertTrue(push(high, Way.FORWARD) <= push(low, Way.FORWARD) * (1 + 1e-3));
    assertTrue(push(high, Way.SIDEWAYS) <= push(low, Way.SIDEWAYS) * (1 + 1e-3));
    assertTrue(leastLean(high) <= leastLean(low) + 0.01);
    assertNoMilder(low, high);
  }

  @Property(tries = 60)
  void aDeeperRackIsNeverTippier(
      @ForAll @IntRange(min = 180, max = 600) int rail,
      @ForAll @IntRange(min = 2, max = 200) int deeper,
      @ForAll @IntRange(min = 60, max = 500) int clear,
      @ForAll @IntRange(min = 1, max = 40) int load) {
    Standing shallow = Standing.of(RACK.formatted("mm", 900, rail, clear, load));
    Standing deep = Standing.of(RACK.formatted("mm", 900, rail + deeper, clear, load));

    assertTrue(push(deep, Way.FORWARD) >= push(shallow, Way.FORWARD));
    assertNoMilder(deep, shallow);
  }

  /** Solved sizes snap to another increment in inches, so every size is given. */
  @Property(tries = 30)
  void theUnitsOfTheFileChangeNothing(
      @ForAll @IntRange(min = 200, max = 900) int width,
      @ForAll @IntRange(min = 180, max = 600) int rail,
      @ForAll @IntRange(min = 60, max = 500) int clear) {
    String metric = RACK.formatted("mm", width, rail, clear, 10);
    String inch = RACK.formatted("in", width, rail, clear, 10).replace("3..9999", "1/8..36");
    Standing mm = Standing.of(metric);
    Standing in = Standing.of(inch);

    assertEquals(push(mm, Way.FORWARD), push(in, Way.FORWARD), push(mm, Way.FORWARD) * 5e-3);
    assertEquals(leastLean(mm), leastLean(in), leastLean(mm) * 5e-3);
    assertEquals(
        mm.findings().stream().map(Finding::rule).toList(),
        in.findings().stream().map(Finding::rule).toList());
  }

  @Provide
  Arbitrary<Standing> racks() {
    return RandomRacks.solvable().map(Standing::of);
  }

  private static void assertNoMilder(Standing steady, Standing other) {
    for (Finding before : steady.findings()) {
      Finding after = other.finding(before.rule());
      assertTrue(after.severity().compareTo(before.severity()) <= 0, before + " " + after);
    }
  }

  private static double push(Standing rack, Way way) {
    double height = rack.design().assembly().extent().size(Axis.Z).inMm();
    return moment(rack.stance(), way, rack.stance().empty()) / height;
  }

  private static double moment(Stance stance, Way way, PointMass body) {
    return body.weight() * way.lever(stance, body);
  }

  private static double leastLean(Standing rack) {
    Stance stance = rack.stance();
    double least = 90;
    for (Way way : Way.values()) {
      least =
          Math.min(
              least,
              stance
                  .topHeavy()
                  .map(Stance.Loading::all)
                  .mapToDouble(all -> Tipping.tilt(way.lever(stance, all), all.z()))
                  .min()
                  .orElseThrow());
    }
    return least;
  }
}
