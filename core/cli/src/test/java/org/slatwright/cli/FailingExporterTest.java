package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.cli.plugin.JarOnTheFly.withExporter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.cli.plugin.JarOnTheFly;

/** An exporter that fails costs its own format and one line; the others are still written. */
class FailingExporterTest {

  private Desk desk;

  @BeforeEach
  void setUp() throws IOException {
    desk = Desk.with(Path.of("src/test/desk"));
  }

  @AfterEach
  void tidy() throws IOException {
    desk.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "throw new IllegalStateException(\"oh\\nno\");",
        "throw new NoClassDefFoundError(\"lib/Missing\");",
        "throw new AbstractMethodError();",
        "throw new AssertionError(\"never\");",
        "throw new OutOfMemoryError(\"Java heap space\");",
        "throw new java.io.IOException(\"font is broken\");",
        "throw new ExportException(\"too many holes\");",
        "export(plan, options, destination);",
        "destination.file(\"../escape.txt\", out -> out.write(1));",
        "destination.file(\"half.txt\", out -> { out.write(1); throw new java.io.IOException(); });"
      })
  void theOthersAreStillWritten(String statement) throws IOException {
    plugin(
        "try { destination.file(\"before.txt\", out -> out.write(1)); } finally { "
            + statement
            + " }");
    Desk.Answer answer = desk.run("export", "trays.yaml", "--to", "mine,csv");
    assertEquals(ExitStatus.NOT_WRITTEN.code(), answer.status());
    String complaint = onlyComplaint(answer);
    assertTrue(complaint.startsWith("error: mine (plugins/mine.jar) was not written: "), complaint);
    assertEquals(
        statement.contains("ExportException"), !complaint.contains("exporter "), complaint);
    assertTrue(answer.out().contains("trays-plan/cut-list.csv"), answer::out);
    assertTrue(
        desk.contents().stream().noneMatch(name -> name.contains("before") || name.contains("/.")));
    assertFalse(Files.exists(desk.directory().resolve("escape.txt")));
  }

  @Test
  void aGoodPluginIsWrittenWithTheRest() throws IOException {
    plugin("destination.file(\"mine.txt\", out -> out.write(1));");
    Desk.Answer answer = desk.run("export", "trays.yaml", "--to", "mine");
    assertEquals("trays-plan/mine.txt" + System.lineSeparator(), answer.out());
    assertEquals(0, answer.status());
  }

  @Test
  void aBrokenJarIsSaidOnceAndTheStatusIsDone() throws IOException {
    Files.createDirectories(desk.directory().resolve("plugins"));
    Files.writeString(desk.directory().resolve("plugins/bad.jar"), "no jar");
    Desk.Answer answer = desk.run("export", "trays.yaml", "--to", "csv");
    assertEquals(ExitStatus.DONE.code(), answer.status());
    String complaint = onlyComplaint(answer);
    assertTrue(
        complaint.startsWith("warning: plugins/bad.jar is left out: it is not a readable jar"),
        complaint);
  }

  @Test
  void aPluginsOwnClassesAreFoundByItsLibraries() throws IOException {
    plugin(
        "if (Thread.currentThread().getContextClassLoader() != getClass().getClassLoader())"
            + " throw new IllegalStateException();");
    assertEquals(0, desk.run("export", "trays.yaml", "--to", "mine").status());
  }

  @Test
  void commandsThatNeedNoExporterLoadNone() throws IOException {
    Files.createDirectories(desk.directory().resolve("plugins"));
    Files.writeString(desk.directory().resolve("plugins/bad.jar"), "no jar");
    assertEquals("", desk.run("check", "trays.yaml").err());
    assertEquals("", desk.run("start", "new.yaml").err());
  }

  /** Besides what is said about the rack. */
  private static String onlyComplaint(Desk.Answer answer) {
    List<String> complaints =
        answer.err().lines().filter(line -> line.matches("error: .*|warning: plugins/.*")).toList();
    assertEquals(1, complaints.size(), answer::err);
    assertTrue(answer.err().lines().noneMatch(line -> line.startsWith("\tat ")), answer::err);
    return complaints.get(0);
  }

  private void plugin(String statement) throws IOException {
    JarOnTheFly jar =
        withExporter(
            "\"mine\"",
            "public void export(Plan plan, OptionValues options, Destination destination)"
                + " throws ExportException, java.io.IOException { "
                + statement
                + " }");
    jar.writeTo(desk.directory().resolve("plugins/mine.jar"));
  }
}
