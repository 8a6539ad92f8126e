package org.slatwright.design.rackfile;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlVersionException;

/** Says in a maker's words what the YAML parser could not read. */
final class YamlGrammar {

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
    if (problem.contains("TAB")) {
      return "a tab; indent with spaces";
    }
    if (problem.contains("mapping values are not allowed")) {
      return "a colon too many here, or one missing above; write \"key: value\", and quotes around a"
          + " text that holds a colon";
    }
    if (problem.contains("could not find expected ':'")) {
      return "a key without its colon just before here; write \"key: value\"";
    }
    if (problem.contains("unexpected end of stream")) {
      return "the file ends within a quoted text; close its quotes";
    }
    if (problem.contains("expected ',' or ']'")) {
      return "a list [ … ] goes wrong just before here: a missing comma or closing ]";
    }
    if (problem.contains("expected ',' or '}'")) {
      return "a group { … } goes wrong just before here: a missing comma or closing }";
    }
    if (problem.contains("expected <block end>")) {
      return "this line does not line up with those above it; check the indentation";
    }
    if (problem.contains("sequence entries are not allowed")) {
      return "a list entry \"- \" may not begin here; put it on a line of its own";
    }
    if (problem.contains("expected the node content")) {
      return "a value is missing just before here, or a bracket is out of place";
    }
    if (problem.contains("escape")) {
      return "an unknown \\ sequence in a text with double quotes; use single quotes, or write \\\\";
    }
    if (problem.contains("cannot start any token")) {
      return "this character may not begin a value; put the value in quotes";
    }
    if (problem.contains("document separator") || problem.contains("<document start>")) {
      return "this does not belong to what stands above; check the indentation, and that there is no"
          + " \"---\" or \"...\" in between";
    }
    return ofASign(problem);
  }

  /** Signs that mean something at the start of a value; a maker hardly ever wants that. */
  private static String ofASign(String problem) {
    if (problem.contains("chomping")
        || problem.contains("indentation indicator")
        || problem.contains("comment or a line break")) {
      return "| and > begin a text of several lines; put quotes around a text that begins with one";
    }
    if (problem.contains("alphabetic") || problem.contains("unexpected character")) {
      return "& and * begin a name; put quotes around a text that begins with one";
    }
    if (problem.contains("URI")
        || problem.contains("tag")
        || problem.contains("'!'")
        || problem.contains("'>'")) {
      return "! begins a tag; put quotes around a text that begins with one";
    }
    return "not YAML here; put quotes around texts that hold signs such as { [ & * ! | > % ?";
  }
}
