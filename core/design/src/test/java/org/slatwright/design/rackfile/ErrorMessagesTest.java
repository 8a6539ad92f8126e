package org.slatwright.design.rackfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every message about a rack file, beside the file that earns it, in {@code
 * error-messages.approved.txt}. With {@code -Dslatwright.accept=true} the messages there are
 * rewritten; look at them before committing.
 */
class ErrorMessagesTest {

  /** The smallest file that is right. */
  static final String HEAD =
      "slatwright: 1\n"
          + "title: Seed-tray rack\n"
          + "timber: { frame: { section: 44 x 44 }, slats: { section: 18 x 95 } }\n";

  private static final Path APPROVED =
      Path.of("src/test/resources/org/slatwright/design/rackfile/error-messages.approved.txt");
  private static final Pattern BYTE = Pattern.compile("<0x([0-9A-F]{2})>");

  @TestFactory
  Stream<DynamicTest> eachMessageIsTheApprovedOne() throws IOException {
    List<Example> examples = examples();
    if (Boolean.getBoolean("slatwright.accept")) {
      String rewritten = examples.stream().map(Example::rewritten).collect(Collectors.joining());
      Files.writeString(APPROVED, preface() + rewritten);
      examples = examples();
    }
    return examples.stream()
        .map(e -> DynamicTest.dynamicTest(e.name, () -> assertEquals(e.approved, e.received())));
  }

  @Test
  void eachExampleIsWrongAndNamedOnce() throws IOException {
    List<String> names = examples().stream().map(e -> e.name).toList();
    assertEquals(names.stream().distinct().toList(), names);
    assertFalse(examples().stream().anyMatch(e -> e.received().startsWith("reads well")));
  }

  @Test
  void theHeadThatExamplesContinueIsRightByItself() throws Exception {
    assertTrue(preface().endsWith(HEAD), "the preface ends with the head");
    RackFileReader.read(HEAD.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of());
  }

  /**
   * One wrong file.
   *
   * @param continued whether it goes on from the head
   * @param input as written in the approved file: text, and lines {@code $ --set …}
   */
  private record Example(boolean continued, String name, String input, String approved) {

    String received() {
      List<String> settings = new ArrayList<>();
      StringBuilder text = new StringBuilder(continued ? HEAD : "");
      for (String line : input.split("(?<=\n)")) {
        if (line.startsWith("$ --set ")) {
          settings.add(line.substring(8).stripTrailing());
        } else {
          text.append(line);
        }
      }
      return messages(bytes(text.toString()), settings)
          + (settings.isEmpty() ? "schema: " + schemaOn(bytes(text.toString())) + "\n\n" : "\n");
    }

    String rewritten() {
      String plus = continued ? "+ " : "";
      return "=== " + plus + name + "\n" + input + ">>>\n" + received();
    }
  }

  private static String messages(byte[] file, List<String> settings) {
    try {
      RackFileReader.read(file, "rack.yaml", settings);
      return "reads well\n";
    } catch (RackFileException e) {
      return e.problems().stream()
          .map(problem -> problem.place() + ": " + problem.message() + "\n")
          .collect(Collectors.joining());
    }
  }

  private static String schemaOn(byte[] file) {
    try {
      String text = new String(file, StandardCharsets.UTF_8);
      return SchemaCheck.complaints(text).isEmpty() ? "cannot tell" : "rejects it too";
    } catch (RuntimeException | StackOverflowError e) { // a list may hold itself
      return "not asked, for this is not sound YAML";
    }
  }

  /** Text in which {@code <0xE9>} is that byte. */
  private static byte[] bytes(String text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Matcher matcher = BYTE.matcher(text);
    int end = 0;
    while (matcher.find()) {
      bytes.writeBytes(text.substring(end, matcher.start()).getBytes(StandardCharsets.UTF_8));
      bytes.write(Integer.parseInt(matcher.group(1), 16));
      end = matcher.end();
    }
    bytes.writeBytes(text.substring(end).getBytes(StandardCharsets.UTF_8));
    return bytes.toByteArray();
  }

  private static List<Example> examples() throws IOException {
    List<Example> examples = new ArrayList<>();
    String[] blocks = text().split("(?m)^=== ");
    for (String block : blocks) {
      int input = block.indexOf('\n') + 1;
      int approved = block.indexOf(">>>\n");
      String name = block.substring(0, input - 1);
      if (block != blocks[0]) {
        examples.add(
            new Example(
                name.startsWith("+ "),
                name.replaceFirst("^\\+ ", ""),
                block.substring(input, approved),
                block.substring(approved + 4)));
      }
    }
    return examples;
  }

  private static String preface() throws IOException {
    return text().substring(0, text().indexOf("\n=== ") + 1);
  }

  private static String text() throws IOException {
    return Files.readString(APPROVED);
  }
}
