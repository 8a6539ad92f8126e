package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LeftoverTextTest {

  private static final Path EXAMPLES = Path.of("../../examples/racks");

  @Test
  void aFewAreNamedAndTheOthersCounted() {
    assertEquals(
        Optional.of("note: left from before, not written now: a, b, c and 2 more"),
        LeftoverText.of(Stream.of("a", "b", "c", "d", "e").map(Path::of).toList()));
    assertEquals(
        Optional.of("note: left from before, not written now: a, b, c"),
        LeftoverText.of(Stream.of("a", "b", "c").map(Path::of).toList()));
    assertEquals(Optional.empty(), LeftoverText.of(List.of()));
  }

  /** So that none of them is ever taken for the maker's own. */
  @Test
  void everyFileThatThisProgramWritesIsKnownAsOneOfAPlan() throws IOException {
    try (Desk desk = Desk.with(EXAMPLES)) {
      desk.run("export", "seed-trays.yaml", "--into", "out");
      desk.run("export", "nursery-bench.yaml", "--into", "out", "--replace");
      long there = desk.contents().stream().filter(file -> isFile(desk, file)).count();
      Desk.Answer answer =
          desk.run("export", "seed-trays.yaml", "--into", "out", "--to", "csv", "--replace");
      long written = answer.out().lines().count();
      assertTrue(answer.err().contains(" and " + (there - written - 3) + " more"), answer::err);
    }
  }

  @Test
  void theMakersOwnFilesAreNotSpokenOf() throws IOException {
    try (Desk desk = Desk.with(EXAMPLES)) {
      desk.run("export", "seed-trays.yaml", "--into", "out");
      Files.createFile(desk.directory().resolve("out/shopping.txt"));
      Desk.Answer answer = desk.run("export", "seed-trays.yaml", "--into", "out", "--replace");
      assertFalse(answer.err().contains("left from before"), answer::err);
    }
  }

  private static boolean isFile(Desk desk, String file) {
    return file.startsWith("out/") && Files.isRegularFile(desk.directory().resolve(file));
  }
}
