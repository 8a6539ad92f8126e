package org.slatwright.design.rackfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.slatwright.design.Planner;

class StarterTest {

  @Test
  void theStarterReadsWithoutAProblem() throws Exception {
    assertEquals("Seed-tray rack", read(Starter.text()).title().value());
  }

  @Test
  void theStarterIsARackThatCanBePlanned() throws Exception {
    assertEquals("Seed-tray rack", Planner.plan(read(Starter.text())).title());
  }

  @Test
  void theStarterFitsTheSchema() {
    assertEquals(List.of(), SchemaCheck.complaints(Starter.text()));
  }

  @Test
  void itStillReadsWithEveryExampleInItsCommentsSwitchedOn() throws Exception {
    String all =
        Starter.text()
            .lines()
            .map(line -> line.replaceFirst("^#( +(?:- \\{|[a-z-]+:))", " $1"))
            .collect(Collectors.joining("\n"));

    RackFile file = read(all);

    assertTrue(file.timber().railSection().isPresent(), "the comments were not switched on");
    assertEquals(2, file.timber().slats().boards().size());
  }

  @Test
  void itIntroducesEveryKeyThatThereIs() {
    Set<String> missing = new TreeSet<>();
    for (String path : SchemaCheck.keys()) {
      String key = path.substring(path.lastIndexOf('.') + 1);
      if (!Pattern.compile("(?m)[ {#]" + key + ":|^" + key + ":").matcher(Starter.text()).find()) {
        missing.add(path);
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void itFitsATerminalAndEndsInALineBreak() {
    assertFalse(Starter.text().lines().anyMatch(line -> line.length() > 80));
    assertTrue(Starter.text().endsWith("\n"));
  }

  private static RackFile read(String text) throws RackFileException {
    return RackFileReader.read(text.getBytes(StandardCharsets.UTF_8), "starter.yaml", List.of());
  }
}
