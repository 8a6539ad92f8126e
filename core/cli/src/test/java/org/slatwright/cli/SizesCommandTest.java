package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.cli.plugin.JarOnTheFly.withExporter;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A table of any length gives a folder a row, each whole, in little memory. */
class SizesCommandTest {

  private static final int MANY = 200;

  /** A table kept whole, or the plans of a table, would not fit into this. */
  private static final List<String> LITTLE_MEMORY =
      List.of("-Xmx24m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

  private Desk desk;

  @BeforeEach
  void setUp() throws IOException {
    desk = Desk.with(Path.of("src/test/desk"));
  }

  @AfterEach
  void tidy() throws IOException {
    desk.close();
  }

  @Test
  void eachRowGivesThePlanThatExportGivesForTheSameSettings() throws IOException {
    table("rack.interior-width", IntStream.of(400, 500));
    assertEquals(0, run("--to", "csv,json,svg").status());
    for (int row = 1; row <= 2; row++) {
      String width = "rack.interior-width=" + (300 + 100 * row);
      desk.run(
          "export",
          "trays.yaml",
          "--into",
          "single",
          "--to",
          "csv,json,svg",
          "--replace",
          "--set",
          width);
      assertEquals(files("single"), files("plans/000" + row));
    }
  }

  @Test
  void theSameTableGivesTheSameBytesAndTheSameWords() throws IOException {
    table("rack.interior-width", IntStream.range(400, 430));
    Desk.Answer first = run("--to", "csv,json");
    Map<String, String> files = files("plans");
    assertEquals(first, run("--to", "csv,json", "--replace"));
    assertEquals(files, files("plans"));
    assertEquals(
        IntStream.rangeClosed(1, 30)
                .mapToObj(row -> String.format(Locale.ROOT, "plans/%04d", row))
                .collect(Collectors.joining("\n", "", "\n"))
            + "30 of 30 plans written into plans",
        first.out().strip().replace(System.lineSeparator(), "\n").replaceFirst("; .*", ""));
  }

  @Test
  void aPlanThatLacksAFormatIsNotWritten() throws IOException {
    withExporter(
            "\"mine\"",
            "public void export(Plan plan, OptionValues options, Destination destination)"
                + " throws ExportException {"
                + " if (plan.title().equals(\"odd\")) throw new ExportException(\"too odd\"); }")
        .writeTo(desk.directory().resolve("plugins/mine.jar"));
    table("title", Stream.of("even", "odd", "even"));
    Desk.Answer answer = run("--to", "csv,mine");
    assertEquals(ExitStatus.NOT_WRITTEN.code(), answer.status());
    assertTrue(answer.err().contains("sizes.csv:3: error: mine ("), answer::err);
    assertTrue(answer.err().contains("was not written: too odd"), answer::err);
    assertTrue(answer.out().contains("2 of 3 plans written into plans"), answer::out);
    assertEquals(Set.of("0001", "0003"), children(desk.directory().resolve("plans")));
  }

  @Test
  void aRackThatCannotBeBuiltIsARowThatIsWrong() throws IOException {
    table("rack.upright", IntStream.of(1500, 300, 1400));
    Desk.Answer answer = run("--to", "csv");
    assertEquals(ExitStatus.RACK_WRONG.code(), answer.status());
    assertTrue(
        answer.err().contains("sizes.csv:3: error: rack.upright=300: uprights of 300 mm leave"),
        answer::err);
    assertEquals(Set.of("0001", "0003"), children(desk.directory().resolve("plans")));
  }

  @Test
  void aTableWithoutRowsIsAnError() throws IOException {
    table("rack.upright", IntStream.empty());
    Desk.Answer answer = run("--to", "csv");
    assertEquals(ExitStatus.RACK_WRONG.code(), answer.status());
    assertTrue(answer.err().contains("sizes.csv: error: the table has no rows"), answer::err);
    assertFalse(Files.exists(desk.directory().resolve("plans")));
  }

  @Test
  void aRowThatCannotBeReadIsCountedAndWhatIsBelowItIsSaidToBeUnread() throws IOException {
    table("title", Stream.of("even", "\"odd\"er", "even"));
    Desk.Answer answer = run("--to", "csv");
    assertEquals(ExitStatus.RACK_WRONG.code(), answer.status());
    assertTrue(answer.out().contains("1 of 2 plans written into plans"), answer::out);
    assertTrue(answer.out().contains("; the rest of the table was not read"), answer::out);
  }

  @Test
  void itStopsSoonWhenNobodyReadsItsAnswerAnyMore() throws IOException {
    table("rack.interior-width", IntStream.range(400, 400 + MANY));
    StringWriter err = new StringWriter();
    Session session =
        new Session(
            desk.directory(),
            Optional.empty(),
            InputStream.nullInputStream(),
            new PrintWriter(Writer.nullWriter()) {
              @Override
              public boolean checkError() {
                return true;
              }
            },
            new PrintWriter(err));
    int status =
        Slatwright.run(
            session,
            "sizes",
            "trays.yaml",
            "--table",
            "sizes.csv",
            "--into",
            "plans",
            "--to",
            "csv");
    assertEquals(ExitStatus.NOT_WRITTEN.code(), status);
    assertTrue(err.toString().contains("error: stopped; every plan that is there is whole"));
    int there = children(desk.directory().resolve("plans")).size();
    assertTrue(there < MANY / 2, () -> there + " plans");
  }

  @Test
  void whatIsLeftOfAnOlderPlanIsToldAndStays() throws IOException {
    table("rack.upright", IntStream.of(1500));
    run("--to", "csv");
    Path stale = desk.directory().resolve("plans/0001/drawings/09-of-another-rack.svg");
    Files.createDirectories(stale.getParent());
    Files.createFile(stale);
    Desk.Answer answer = run("--to", "csv", "--replace");
    assertTrue(
        answer
            .err()
            .contains(
                "note: left from before, not written now: plans/0001/drawings/09-of-another-rack.svg"),
        answer::err);
    assertTrue(Files.exists(stale));
  }

  @Test
  void aFolderThatWasMadeForNothingIsTakenBack() throws IOException {
    table("rack.upright", IntStream.of(300));
    assertEquals(ExitStatus.RACK_WRONG.code(), run("--to", "csv").status());
    assertFalse(Files.exists(desk.directory().resolve("plans")));
  }

  @Test
  void manyRowsNeedNoMoreMemoryThanAFew() throws IOException, InterruptedException {
    String filler = "x".repeat(150);
    table("title", IntStream.range(0, MANY).mapToObj(row -> filler + row));
    Process process =
        SizesProcess.start(
            desk.directory(),
            LITTLE_MEMORY,
            "trays.yaml",
            "--table",
            "sizes.csv",
            "--into",
            "plans",
            "--to",
            "csv,json,dxf");
    assertTrue(process.waitFor(120, TimeUnit.SECONDS));
    assertEquals(0, process.exitValue(), this::printed);
    assertEquals(MANY, children(desk.directory().resolve("plans")).size());
  }

  @Test
  void stoppingItLeavesNoHalfPlan() throws IOException, InterruptedException {
    table("rack.interior-width", IntStream.range(0, 5_000).map(row -> 400 + row % 200));
    Process process =
        SizesProcess.start(
            desk.directory(),
            List.of(),
            "trays.yaml",
            "--table",
            "sizes.csv",
            "--into",
            "plans",
            "--to",
            "csv,json,dxf");
    Path plans = desk.directory().resolve("plans");
    for (int i = 0; i < 600 && (!Files.exists(plans) || children(plans).size() < 5); i++) {
      Thread.sleep(50);
    }
    process.destroy(); // as Ctrl-C does
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    Set<String> there = children(plans);
    assertTrue(there.size() >= 5 && there.size() < 5_000, () -> there.size() + printed());
    Set<Set<String>> contents = new HashSet<>();
    for (String plan : there) {
      assertFalse(plan.startsWith("."), plan);
      contents.add(files("plans/" + plan).keySet());
    }
    assertEquals(1, contents.size(), "all plans have the same files");
  }

  private Desk.Answer run(String... more) {
    List<String> arguments =
        Stream.concat(
                Stream.of("sizes", "trays.yaml", "--table", "sizes.csv", "--into", "plans"),
                Stream.of(more))
            .toList();
    return desk.run(arguments.toArray(String[]::new));
  }

  private void table(String key, IntStream cells) throws IOException {
    table(key, cells.mapToObj(Integer::toString));
  }

  private void table(String key, Stream<String> cells) throws IOException {
    Files.write(
        desk.directory().resolve("sizes.csv"), Stream.concat(Stream.of(key), cells).toList());
  }

  private String printed() {
    try {
      return Files.readString(desk.directory().resolve("printed.txt"));
    } catch (IOException e) {
      return e.toString();
    }
  }

  private static Set<String> children(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  private Map<String, String> files(String folder) throws IOException {
    Path root = desk.directory().resolve(folder);
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Files.readString(file));
      }
    }
    return files;
  }
}
