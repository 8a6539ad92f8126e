package org.slatwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Commands and what they answer, as one text. A line with {@code #} is a remark, one with {@code $}
 * a command; below it stand its results, its complaints (each line with {@code !}) and its status
 * in brackets. Besides {@code slatwright} a desk knows {@code ls} and {@code cat}; {@code < FILE}
 * gives a command its input.
 */
final class Transcript {

  private static final Pattern WORD = Pattern.compile("'([^']*)'|\\S+");
  private static final Path RACKS = Path.of("src/test/desk");

  private final Desk desk;
  private final StringBuilder text = new StringBuilder();

  private Transcript(Desk desk) {
    this.desk = desk;
  }

  /** The same remarks and commands, with what the commands answer now. */
  static String replayed(String approved) throws IOException {
    try (Desk desk = Desk.with(RACKS)) {
      Transcript transcript = new Transcript(desk);
      for (String line : approved.lines().toList()) {
        if (line.startsWith("# ")) {
          transcript.text.append(line).append('\n');
        } else if (line.startsWith("$ ")) {
          transcript.text.append(line).append('\n');
          transcript.answer(words(line.substring(2)));
          transcript.text.append('\n');
        }
      }
      return transcript.text.toString().stripTrailing() + "\n";
    }
  }

  private void answer(List<String> words) throws IOException {
    switch (words.get(0)) {
      case "slatwright" -> answerSlatwright(words.subList(1, words.size()));
      case "ls" -> add("", list());
      case "cat" -> add("", Files.readString(desk.directory().resolve(words.get(1))));
      default -> throw new IllegalArgumentException("no command " + words);
    }
  }

  private void answerSlatwright(List<String> words) throws IOException {
    int from = words.indexOf("<");
    byte[] input =
        from < 0 ? new byte[0] : Files.readAllBytes(desk.directory().resolve(words.get(from + 1)));
    List<String> arguments = from < 0 ? words : words.subList(0, from);
    Desk.Answer answer = desk.run(input, arguments.toArray(String[]::new));
    add("", answer.out());
    add("! ", answer.err());
    text.append('[').append(answer.status()).append("]\n");
  }

  private void add(String prefix, String lines) {
    lines.lines().forEach(line -> text.append((prefix + line).stripTrailing()).append('\n'));
  }

  private String list() throws IOException {
    try (Stream<Path> files = Files.walk(desk.directory())) {
      return String.join(
          "\n",
          files
              .filter(Files::isRegularFile)
              .map(file -> desk.directory().relativize(file).toString())
              .sorted()
              .toList());
    }
  }

  private static List<String> words(String command) {
    List<String> words = new ArrayList<>();
    WORD.matcher(command).results().map(Transcript::word).forEach(words::add);
    return words;
  }

  private static String word(MatchResult match) {
    return match.group(1) == null ? match.group() : match.group(1);
  }
}
