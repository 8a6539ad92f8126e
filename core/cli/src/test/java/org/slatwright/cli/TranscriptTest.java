package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every transcript in {@code src/test/transcripts} is what really happens. {@code
 * -Dslatwright.accept=true} writes what happens into them: read the change before committing it.
 */
class TranscriptTest {

  private static final Path TRANSCRIPTS = Path.of("src/test/transcripts");

  @TestFactory
  List<DynamicTest> everyTranscriptIsTrue() throws IOException {
    List<Path> all;
    try (Stream<Path> files = Files.list(TRANSCRIPTS)) {
      all = files.filter(file -> file.toString().endsWith(".approved.txt")).sorted().toList();
    }
    assertFalse(all.isEmpty());
    return all.stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)))
        .toList();
  }

  private static void check(Path transcript) throws IOException {
    String approved = Files.readString(transcript, StandardCharsets.UTF_8);
    String received = Transcript.replayed(approved);
    if (Boolean.getBoolean("slatwright.accept")) {
      Files.writeString(transcript, received, StandardCharsets.UTF_8);
    } else {
      assertSameLines(approved.lines().toList(), received.lines().toList());
    }
  }

  /** Says where the two part, since a whole transcript is too long to compare by eye. */
  private static void assertSameLines(List<String> approved, List<String> received) {
    for (int i = 0; i < Math.min(approved.size(), received.size()); i++) {
      int line = i + 1;
      assertEquals(approved.get(i), received.get(i), () -> "line " + line);
    }
    assertEquals(approved.size(), received.size(), "lines");
  }
}
