package org.slatwright.design.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthGrammar;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** Rack files from text, solved. */
final class Solving {

  private Solving() {}

  static Rack solve(String yaml, String... settings) throws RackFileException {
    return solve(yaml, List.of(settings));
  }

  static Rack solve(String yaml, List<String> settings) throws RackFileException {
    return Sizing.solve(
        RackFileReader.read(yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", settings));
  }

  static List<Problem> problems(String yaml, String... settings) {
    return assertThrows(RackFileException.class, () -> solve(yaml, settings)).problems();
  }

  /** The one problem that there must be. */
  static Problem problem(String yaml, String... settings) {
    List<Problem> problems = problems(yaml, settings);
    assertEquals(1, problems.size(), problems.toString());
    return problems.get(0);
  }

  /** The settings of its changes, after each was applied alone and gave a rack that closes. */
  static List<String> provenChanges(Problem problem, String yaml, String... settings)
      throws RackFileException {
    for (Problem.Change change : problem.changes()) {
      List<String> all = new java.util.ArrayList<>(List.of(settings));
      all.add(change.setting());
      solve(yaml, all);
    }
    return problem.changes().stream().map(Problem.Change::setting).toList();
  }

  static Chain chain(Rack rack, String name) {
    return rack.chains().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  /** As printed: {@code foot 100*, rail 44, …}, solved links with a star. */
  static String links(Rack rack, String name) {
    return String.join(
        ", ",
        chain(rack, name).links().stream()
            .map(
                link ->
                    link.name()
                        + " "
                        + new org.slatwright.api.measure.LengthFormat(rack.units())
                            .number(link.length())
                        + (link.solved() ? "*" : ""))
            .toList());
  }

  static String note(Rack rack, String subject) {
    return rack.notes().stream()
        .filter(n -> n.subject().equals(subject))
        .map(Finding::message)
        .findFirst()
        .orElse("no note on " + subject);
  }

  static List<Length> mm(String... lengths) {
    return List.of(lengths).stream().map(Solving::length).toList();
  }

  static Length length(String text) {
    return new LengthGrammar(Unit.MM).read(text).orElseThrow();
  }
}
