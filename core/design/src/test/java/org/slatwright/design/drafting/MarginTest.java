package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileReader;

/** A reader of the sheet sees which numbers miss their limits without comparing them himself. */
class MarginTest {

  private static final Path EXAMPLES = Path.of("../../examples/racks");

  /** Without this load the examples have no error and hardly a warning. */
  private static final List<String> MUCH = List.of("load.per-shelf=400 kg");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "39 N|at least 89 N|true",
        "115 N|at least 89 N|false",
        "89 N|at least 89 N|false",
        "14 mm|at least 16 mm in a pilot hole|true",
        "3.2 mm|at most 2.9 mm|true",
        "0.24 N·m|at most 0.68 N·m|false",
        "4 1/2\"|at least 4 9/16\"|true",
        "4 5/8\"|at least 4 9/16\"|false",
        "3/8\"|not between 0.28\" and 0.47\"|true",
        "1/2\"|not between 0.28\" and 0.47\"|false",
        "10 mm|usually 15 mm to 22 mm|true",
        "16 mm|usually 15 mm to 22 mm|false",
        "1500 mm high|to stand free below 686 mm, and steady|true",
        "600 mm high|to stand free below 686 mm, and steady|false",
        "9.4°|at least 10°|true",
        "3.7|at most 4|false",
        "0 mm|more than 0|true",
        "16 mm|more than 0|false",
        "2 kg|at most 900 g|false",
        "|at least 13 mm|false",
        "39 N||false",
        "many|at most a few|false",
      })
  void whatMissesItsLimitIsSeen(String value, String limit, boolean missed) {
    assertEquals(missed, Margin.isMissed(finding(value, limit)));
  }

  /** Whatever has to change because of a number misses a limit. */
  @Test
  void everyNumberThatIsAnErrorOrAWarningMissesItsLimit() throws Exception {
    for (Finding finding : findings(MUCH)) {
      boolean numbered = !finding.value().isEmpty() && !finding.limit().isEmpty();
      if (numbered && finding.severity() != Severity.NOTE) {
        assertTrue(Margin.isMissed(finding), finding::toString);
      }
    }
  }

  @Test
  void aStressOrSagThatIsWellDoesNotMissItsLimit() throws Exception {
    for (Finding finding : findings(List.of())) {
      if (finding.rule().contains("sag") && finding.severity() == Severity.NOTE) {
        assertFalse(Margin.isMissed(finding), finding::toString);
      }
    }
  }

  private static List<Finding> findings(List<String> settings) throws Exception {
    List<Path> racks;
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      racks = files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    List<Finding> findings = new ArrayList<>();
    for (Path rack : racks) {
      byte[] bytes = Files.readAllBytes(rack);
      findings.addAll(
          Planner.plan(RackFileReader.read(bytes, rack.toString(), settings)).findings());
    }
    assertFalse(findings.isEmpty());
    return findings;
  }

  private static Finding finding(String value, String limit) {
    return new Finding(
        Severity.NOTE,
        "rule",
        "slat S",
        "bends",
        value == null ? "" : value,
        limit == null ? "" : limit,
        "",
        "");
  }
}
