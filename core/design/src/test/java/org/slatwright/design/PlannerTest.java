package org.slatwright.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Sizing;

class PlannerTest {

  private static final Path EXAMPLES = Path.of("../../examples/racks");

  private static final String PLANT_STAND =
      """
      slatwright: 1
      title: Plant stand
      timber:
        frame: { section: 44 x 44 }
        slats: { section: 18 x 95 }
      rack: { interior-width: 580, rail-length: 420, upright: 900 }
      slats: { per-shelf: 3 }
      """;

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @Test
  void thereAreExamplesInMillimetresAndInInches() throws Exception {
    List<String> units =
        examples().stream().map(PlannerTest::read).map(file -> file.units().symbol()).toList();

    assertTrue(units.contains("mm") && units.contains("in"), units.toString());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsPlannedWithoutAnError(Path example) throws Exception {
    Plan plan = Planner.plan(read(example));

    assertEquals(
        List.of(),
        plan.findings().stream()
            .filter(finding -> finding.severity() == Finding.Severity.ERROR)
            .toList());
    assertEquals(
        plan.assembly().parts(), plan.cutList().stream().map(CutLine::part).toList(), "cut list");
    assertTrue(plan.sheets().size() >= 1);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void planningTwiceGivesTheSamePlan(Path example) throws Exception {
    assertEquals(Planner.plan(read(example)), Planner.plan(read(example)));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void findingsOfEveryExampleAreWorstFirst(Path example) throws Exception {
    assertWorstFirst(Planner.plan(read(example)));
  }

  /** A gap of (420 - 3 x 95) / 2 = 67 is wider than usual, which comes up after some notes. */
  @Test
  void aWarningComesBeforeTheNotes() throws Exception {
    RackFile file = read(PLANT_STAND);
    assertSame(
        Finding.Severity.NOTE, Sizing.solve(file).notes().get(0).severity(), "as they came up");

    Plan plan = Planner.plan(file);

    assertNotEquals(Finding.Severity.NOTE, plan.findings().get(0).severity());
    assertTrue(plan.findings().stream().anyMatch(f -> f.subject().equals("slats.gap")));
    assertWorstFirst(plan);
  }

  @Test
  void whatCannotBeBuiltIsNotPlanned() {
    RackFileException refused =
        assertThrows(
            RackFileException.class,
            () -> Planner.plan(read(PLANT_STAND.replace("rail-length: 420", "rail-length: 80"))));

    assertEquals(
        "slats of 95 mm are wider than the rails of 80 mm", refused.problems().get(0).message());
  }

  private static void assertWorstFirst(Plan plan) {
    assertEquals(
        plan.findings().stream().sorted(Comparator.comparing(Finding::severity)).toList(),
        plan.findings());
  }

  private static RackFile read(Path example) {
    try {
      return read(Files.readString(example));
    } catch (IOException | RackFileException e) {
      throw new AssertionError(example.toString(), e);
    }
  }

  private static RackFile read(String yaml) throws RackFileException {
    return RackFileReader.read(yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of());
  }
}
