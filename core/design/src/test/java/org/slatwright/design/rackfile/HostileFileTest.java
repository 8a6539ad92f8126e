package org.slatwright.design.rackfile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.arbitraries.StringArbitrary;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Whatever is fed to it, the reader reads or complains: quickly, and in no other way. */
class HostileFileTest {

  private static final String EVERY_KEY = RackFileReaderTest.text("every-key.yaml");

  @Test
  void aFileOfMoreThanOneMebibyteIsRefusedUnread() {
    byte[] large = new byte[RackFileReader.MOST_BYTES + 1];
    Arrays.fill(large, (byte) '#');

    assertEquals(
        List.of("rack.yaml: is larger than 1 MiB; a rack file takes a few KiB"), complaints(large));
  }

  @Test
  void aFileOfExactlyOneMebibyteIsRead() throws Exception {
    byte[] large = Arrays.copyOf(ErrorMessagesTest.HEAD.getBytes(UTF_8), RackFileReader.MOST_BYTES);
    Arrays.fill(large, ErrorMessagesTest.HEAD.length(), large.length, (byte) '#');

    assertEquals("Seed-tray rack", RackFileReader.read(large, "x", List.of()).title().value());
  }

  @Test
  void nestingWithoutEndIsRefusedAtTheLevelTooMany() {
    String deep = "openings: " + "[".repeat(100_000);

    assertEquals(
        List.of("rack.yaml:1:30: nested more than 20 deep; a rack file needs about six"),
        complaints(deep));
    assertEquals(1, complaints("- ".repeat(100_000)).size());
    assertEquals(1, complaints("{a: ".repeat(100_000)).size());
    assertEquals(1, complaints("? ".repeat(100_000)).size());
  }

  @Test
  void listsOfListsOfListsByAliasAreRefused() {
    StringBuilder laughs = new StringBuilder("a0: &a0 [ ha, ha, ha, ha, ha, ha, ha, ha, ha ]\n");
    for (int i = 1; i < 10; i++) {
      String before = "*a" + (i - 1);
      laughs.append("a%s: &a%s [ %s, %s ]\n".formatted(i, i, before, before));
    }

    assertEquals(
        List.of("more than 10 000 values; no rack needs so many"),
        messages(laughs.toString().replace(" ]", ", 1".repeat(31) + " ]")));
  }

  @Test
  void depthThatComesByAliasesCountsToo() {
    StringBuilder deep = new StringBuilder("a0: &a0 [[[[[[[[[ 1 ]]]]]]]]]\n");
    deep.append("a1: &a1 [[[[[[[[[ *a0 ]]]]]]]]]\na2: [[[ *a1 ]]]\n");

    assertEquals(
        List.of("rack.yaml:3:9: nested more than 20 deep; a rack file needs about six"),
        complaints(deep.toString()));
  }

  @Test
  void aListWithoutEndIsRefused() {
    String huge = "rack: { openings: [" + "1,".repeat(400_000) + "1 ] }";

    assertEquals(List.of("more than 10 000 values; no rack needs so many"), messages(huge));
  }

  @Test
  void numbersWithoutEndAreNoLengths() {
    String digits = "9".repeat(500_000);

    assertEquals(
        1, complaints(ErrorMessagesTest.HEAD + "rack: { upright: " + digits + " }").size());
    assertEquals(1, complaints(ErrorMessagesTest.HEAD + "rack: { bays: " + digits + " }").size());
    assertEquals(
        1, complaints(ErrorMessagesTest.HEAD + "load: { per-shelf: " + digits + " kg }").size());
    assertEquals(
        1,
        complaints(ErrorMessagesTest.HEAD + "slats: { gap-range: " + "1..".repeat(9999) + " }")
            .size());
  }

  @Test
  void fiftyProblemsAreListedAndTheRestCounted() {
    String wrong = ErrorMessagesTest.HEAD + "rack: { openings: [ " + "x, ".repeat(73) + " ] }";

    List<String> complaints = complaints(wrong);

    assertEquals(51, complaints.size());
    assertEquals("rack.yaml:4:171: and 23 more from here on", complaints.get(50));
  }

  @Test
  void aLongKeyAndALongSettingAreShownShort() {
    String key = "k".repeat(100_000);

    assertTrue(
        messages(ErrorMessagesTest.HEAD + "? " + key + "\n: 1\n")
            .get(0)
            .startsWith("unknown key \"" + "k".repeat(40) + "…\"; write slatwright, title"));
    assertTrue(
        complaints(ErrorMessagesTest.HEAD.getBytes(UTF_8), "rack.bays=" + "9".repeat(99_999))
            .get(0)
            .startsWith(
                "--set rack.bays=" + "9".repeat(190) + "…: bays \"" + "9".repeat(40) + "…\""));
  }

  @Property(tries = 200)
  void anyBytesAreReadOrComplainedOf(@ForAll @Size(max = 400) byte[] bytes) {
    complaints(bytes);
  }

  @Property(tries = 200)
  void anyTextOfYamlsOwnSignsIsReadOrComplainedOf(@ForAll("yamlSigns") String text) {
    complaints(text);
  }

  @Property(tries = 200)
  void aRightFileGoneWrongSomewhereIsReadOrComplainedOf(@ForAll("mutations") List<Edit> edits) {
    StringBuilder text = new StringBuilder(EVERY_KEY);
    for (Edit edit : edits) {
      int at = Math.floorMod(edit.at, text.length());
      text.replace(at, Math.min(text.length(), at + edit.deleted), edit.inserted);
    }
    complaints(text.toString());
  }

  @Property(tries = 200)
  void anySettingIsReadOrComplainedOf(@ForAll("settings") String setting) {
    complaints(EVERY_KEY.getBytes(UTF_8), setting);
  }

  /** A slip of the pen. */
  record Edit(int at, int deleted, String inserted) {}

  @Provide
  Arbitrary<List<Edit>> mutations() {
    return Combinators.combine(
            Arbitraries.integers(),
            Arbitraries.integers().between(0, 12),
            Arbitraries.oneOf(yamlSigns().ofMaxLength(3), Arbitraries.strings().ofMaxLength(2)))
        .as(Edit::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  @Provide
  StringArbitrary yamlSigns() {
    return Arbitraries.strings().withChars(" \n\t-:?[]{},#&*!|>'\"%@`~\\<=x1a.\r\u2028\uFEFF");
  }

  @Provide
  Arbitrary<String> settings() {
    return Combinators.combine(
            Arbitraries.of(
                "rack",
                "rack.upright",
                "holds[0]",
                "holds[0].name",
                "rack.openings[1].clear",
                "a."),
            yamlSigns().ofMaxLength(12))
        .as((key, value) -> key + "=" + value);
  }

  /** What is said, without the places. */
  private static List<String> messages(String text) {
    return complaints(text).stream().map(line -> line.replaceFirst("^\\S+ ", "")).toList();
  }

  private static List<String> complaints(String text) {
    return complaints(text.getBytes(UTF_8));
  }

  /** What is said; empty when the file reads well. */
  private static List<String> complaints(byte[] bytes, String... settings) {
    AtomicReference<List<String>> said = new AtomicReference<>(List.of());
    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () -> {
          try {
            RackFileReader.read(bytes, "rack.yaml", List.of(settings));
          } catch (RackFileException e) {
            said.set(e.problems().stream().map(p -> p.place() + ": " + p.message()).toList());
          }
        });
    return said.get();
  }
}
