package org.slatwright.design.rackfile;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlVersionException;

/** Says in a maker's words what the YAML parser could not read. */
final class YamlGrammar {

  /** The first one counts. The last few are about signs that a maker hardly ever means so. */
  private static final List<Meaning> MEANINGS =
      List.of(
          new Meaning(List.of("TAB"), "a tab; indent with spaces"),
          new Meaning(
              List.of("mapping values are not allowed"),
              "a colon too many here, or one missing above; write \"key: value\", and quotes around a"
                  + " text that holds a colon"),
          new Meaning(
              List.of("could not find expected ':'"),
              "a key without its colon just before here; write \"key: value\""),
          new Meaning(
              List.of("unexpected end of stream"),
              "the file ends within a quoted text; close its quotes"),
          new Meaning(
              List.of("expected ',' or ']'"),
              "a list [ … ] goes wrong just before here: a missing comma or closing ]"),
          new Meaning(
              List.of("expected ',' or '}'"),
              "a group { … } goes wrong just before here: a missing comma or closing }"),
          new Meaning(
              List.of("expected <block end>"),
              "this line does not line up with those above it; check the indentation"),
          new Meaning(
              List.of("sequence entries are not allowed"),
              "a list entry \"- \" may not begin here; put it on a line of its own"),
          new Meaning(
              List.of("expected the node content"),
              "a value is missing just before here, or a bracket is out of place"),
          new Meaning(
              List.of("escape"),
              "an unknown \\ sequence in a text with double quotes; use single quotes, or write \\\\"),
          new Meaning(
              List.of("cannot start any token"),
              "this character may not begin a value; put the value in quotes"),
          new Meaning(
              List.of("document separator", "<document start>"),
              "this does not belong to what stands above; check the indentation, and that there is no"
                  + " \"---\" or \"...\" in between"),
          new Meaning(
              List.of("chomping", "indentation indicator", "comment or a line break"),
              "| and > begin a text of several lines; put quotes around a text that begins with one"),
          new Meaning(
              List.of("alphabetic", "unexpected character"),
              "& and * begin a name; put quotes around a text that begins with one"),
          new Meaning(
              List.of("URI", "tag", "'!'", "'>'"),
              "! begins a tag; put quotes around a text that begins with one"));

  private YamlGrammar() {}

  /** Where the parser stopped, if it says. */
  static Optional<Mark> mark(YamlEngineException e) {
    return e instanceof MarkedYamlEngineException marked
        ? marked.getProblemMark().or(marked::getContextMark)
        : Optional.empty();
  }

  /** What is wrong there and what to look at. */
  static String complaint(YamlEngineException e) {
    if (e instanceof YamlVersionException) {
      return "this version of YAML is not known; delete the %YAML line or write %YAML 1.2";
    }
    String problem = e instanceof MarkedYamlEngineException marked ? marked.getProblem() : "";
    return plain(problem == null ? "" : problem);
  }

  private static String plain(String problem) {
    return MEANINGS.stream()
        .filter(meaning -> meaning.said().stream().anyMatch(problem::contains))
        .map(Meaning::words)
        .findFirst()
        .orElse("not YAML here; put quotes around texts that hold signs such as { [ & * ! | > % ?");
  }

  /**
   * What the parser says, and what that means to a maker.
   *
   * @param said parts of the parser's messages, any of them
   */
  private record Meaning(List<String> said, String words) {}
}
