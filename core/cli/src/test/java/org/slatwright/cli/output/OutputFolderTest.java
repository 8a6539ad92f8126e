package org.slatwright.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.export.Destination;

/** Files appear whole or not at all, and never outside the folder. */
class OutputFolderTest {

  @TempDir private Path desk;

  @Test
  void nothingIsThereBeforeAllIs() throws IOException {
    try (OutputFolder folder = new OutputFolder(desk.resolve("plan"), false)) {
      OutputFolder.Batch batch = folder.batch();
      batch.file("a.txt", text("a"));
      batch.file("deep/b.txt", text("b"));
      batch.keep();
      assertEquals(List.of(), visibleFiles());
      List<Path> placed = new ArrayList<>();
      folder.publish(placed::add);
      assertEquals(List.of(desk.resolve("plan/a.txt"), desk.resolve("plan/deep/b.txt")), placed);
    }
    assertEquals(List.of("plan/a.txt", "plan/deep/b.txt"), allFiles());
    assertEquals("b", Files.readString(desk.resolve("plan/deep/b.txt")));
  }

  @Test
  void aBatchThatIsNotKeptLeavesNothing() throws IOException {
    try (OutputFolder folder = new OutputFolder(desk.resolve("plan/of/mine"), false)) {
      folder.batch().file("a.txt", text("a"));
      folder.publish(file -> {});
    }
    assertEquals(List.of(), contents());
  }

  @Test
  void aFileThatExistsStopsAllBeforeAnyIsTouched() throws IOException {
    Files.writeString(desk.resolve("b.txt"), "mine");
    try (OutputFolder folder = new OutputFolder(desk, false)) {
      OutputFolder.Batch batch = folder.batch();
      batch.file("a.txt", text("a"));
      batch.file("b.txt", text("b"));
      batch.keep();
      OutputException refused =
          assertThrows(OutputException.class, () -> folder.publish(file -> {}));
      assertTrue(refused.getMessage().contains(desk.resolve("b.txt").toString()));
    }
    assertEquals(List.of("b.txt"), allFiles());
    assertEquals("mine", Files.readString(desk.resolve("b.txt")));
  }

  @Test
  void filesInPlaceAreToldOfEvenWhenALaterOneFails() throws IOException {
    Files.writeString(desk.resolve("drawings"), "mine");
    List<Path> placed = new ArrayList<>();
    try (OutputFolder folder = new OutputFolder(desk, false)) {
      OutputFolder.Batch batch = folder.batch();
      batch.file("a.txt", text("a"));
      batch.file("drawings/b.txt", text("b"));
      batch.file("c.txt", text("c"));
      batch.keep();
      assertThrows(OutputException.class, () -> folder.publish(placed::add));
    }
    assertEquals(List.of(desk.resolve("a.txt")), placed);
    assertEquals(List.of("a.txt", "drawings"), allFiles());
  }

  @Test
  void replacingReplacesWhatIsNamedAndNothingElse() throws IOException {
    Files.writeString(desk.resolve("a.txt"), "old");
    Files.writeString(desk.resolve("other.txt"), "mine");
    write(desk, true, "a.txt");
    assertEquals("new", Files.readString(desk.resolve("a.txt")));
    assertEquals("mine", Files.readString(desk.resolve("other.txt")));
  }

  @Test
  void aFolderIsNotReplaced() throws IOException {
    Files.createDirectories(desk.resolve("a.txt/inside"));
    assertThrows(OutputException.class, () -> write(desk, true, "a.txt"));
    assertTrue(Files.isDirectory(desk.resolve("a.txt/inside")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".",
        "..",
        "../a.txt",
        "/a.txt",
        "a/../b.txt",
        "a//b.txt",
        "a/",
        "a\\b.txt",
        "C:a.txt",
        "a b.txt",
        ".hidden",
        "-a.txt",
        "a.txt.",
        "con.txt",
        "deep/NUL",
        "ä.txt",
        "a\n.txt",
        "a\0.txt"
      })
  void anUnsafeNameIsRefused(String name) throws IOException {
    try (OutputFolder folder = new OutputFolder(desk, false)) {
      OutputFolder.Batch batch = folder.batch();
      assertThrows(IllegalArgumentException.class, () -> batch.file(name, text("a")));
    }
    assertEquals(List.of(), contents());
  }

  @Test
  void aNameIsUsedOnceByAllExportersTogetherWhateverItsCase() throws IOException {
    try (OutputFolder folder = new OutputFolder(desk, false)) {
      folder.batch().file("cut-list.csv", text("a"));
      OutputFolder.Batch other = folder.batch();
      assertThrows(IllegalArgumentException.class, () -> other.file("Cut-List.CSV", text("b")));
      assertThrows(
          IllegalArgumentException.class, () -> other.file("cut-list.csv/part", text("b")));
    }
  }

  @Test
  void aLinkedFolderDoesNotLeadOut() throws IOException {
    Path outside = Files.createDirectory(desk.resolve("outside"));
    Path plan = Files.createDirectory(desk.resolve("plan"));
    link(plan.resolve("drawings"), outside);
    OutputException refused =
        assertThrows(OutputException.class, () -> write(plan, true, "drawings/a.txt"));
    assertTrue(refused.getMessage().contains("leads out"), refused::getMessage);
    assertEquals(List.of(), allFiles());
  }

  @Test
  void aLinkedFileIsReplacedAndNotWrittenThrough() throws IOException {
    Path outside = Files.writeString(desk.resolve("outside.txt"), "mine");
    Path plan = Files.createDirectory(desk.resolve("plan"));
    link(plan.resolve("a.txt"), outside);
    write(plan, true, "a.txt");
    assertEquals("mine", Files.readString(outside));
    assertEquals("new", Files.readString(plan.resolve("a.txt")));
  }

  @Test
  void aFailureOfTheDiskComesUpEvenWhenTheExporterHidesIt() throws IOException {
    Path full = Path.of("/dev/full");
    Assumptions.assumeTrue(Files.isWritable(full), "needs /dev/full");
    NamedStream out = new NamedStream(desk.resolve("a.txt"), Files.newOutputStream(full));
    assertThrows(OutputException.class, () -> out.write(1));
    OutputException again = assertThrows(OutputException.class, out::close);
    assertTrue(again.getMessage().startsWith("cannot write " + desk.resolve("a.txt") + ": "));
  }

  @Test
  void whatAnExporterThrowsIsNotTakenForTheDisk() throws IOException {
    try (OutputFolder folder = new OutputFolder(desk, false)) {
      OutputFolder.Batch batch = folder.batch();
      IOException own = new IOException("font is broken");
      Destination.Content failing =
          out -> {
            out.write(1);
            throw own;
          };
      assertEquals(own, assertThrows(IOException.class, () -> batch.file("a.txt", failing)));
      batch.requireWritable();
    }
    assertEquals(List.of(), contents());
  }

  @Test
  void aFolderThatCannotBeMadeIsNamed() {
    Path place = Path.of("/proc/slatwright-plan");
    Assumptions.assumeTrue(Files.isDirectory(place.getParent()), "needs /proc");
    OutputException refused =
        assertThrows(OutputException.class, () -> new OutputFolder(place, false));
    assertTrue(refused.getMessage().startsWith("cannot write " + place), refused::getMessage);
  }

  private static void write(Path folder, boolean replace, String name) throws IOException {
    try (OutputFolder output = new OutputFolder(folder, replace)) {
      OutputFolder.Batch batch = output.batch();
      batch.file(name, text("new"));
      batch.keep();
      output.publish(file -> {});
    }
  }

  private static Destination.Content text(String text) {
    return out -> out.write(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  private static void link(Path from, Path to) {
    try {
      Files.createSymbolicLink(from, to);
    } catch (IOException | UnsupportedOperationException e) {
      Assumptions.abort("links cannot be made here");
    }
  }

  private List<String> visibleFiles() throws IOException {
    return allFiles().stream().filter(name -> !name.contains("/.")).toList();
  }

  private List<String> allFiles() throws IOException {
    return contents().stream().filter(name -> Files.isRegularFile(desk.resolve(name))).toList();
  }

  private List<String> contents() throws IOException {
    try (Stream<Path> all = Files.walk(desk)) {
      return all.filter(path -> !path.equals(desk))
          .map(path -> desk.relativize(path).toString())
          .sorted()
          .toList();
    }
  }
}
