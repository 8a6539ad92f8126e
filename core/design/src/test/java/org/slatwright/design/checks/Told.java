package org.slatwright.design.checks;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthGrammar;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** What the rules on tools, timber and cautions tell of a rack file. */
record Told(Plan plan) {

  /** Metric, of square planed spruce. */
  static final String ORCHIDS =
      """
      slatwright: 1
      title: Orchid stand
      timber:
        frame: { section: 44 x 44, species: norway spruce }
        slats: { section: 18 x 70 }
        dowel: { diameter: 10 }
      rack:
        interior-width: 600
        rail-length: 320
        foot: 100
        openings: [ 300, 260 ]
        top: 30
      slats: { per-shelf: 4, gap: 13 }
      load: { per-shelf: 12 kg }
      """;

  /** Inch, of dressed stock. */
  static final String BULBS =
      """
      slatwright: 1
      title: Bulb rack
      units: in
      timber:
        frame: { section: 1 1/2 x 1 1/2, species: douglas-fir }
        slats: { section: 3/4 x 2 1/2 }
        dowel: { diameter: 3/8 }
      rack:
        interior-width: 24
        rail-length: 13
        foot: 4
        openings: [ 10, 10 ]
        top: 1
      slats: { per-shelf: 4, gap: 3/4 }
      """;

  static Told of(String yaml, String... settings) throws RackFileException {
    return new Told(
        Planner.plan(
            RackFileReader.read(
                yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of(settings))));
  }

  List<Finding> by(String rule) {
    return plan.findings().stream().filter(finding -> finding.rule().equals(rule)).toList();
  }

  /** The one finding of that rule. */
  Finding the(String rule) {
    List<Finding> found = by(rule);
    if (found.size() != 1) {
      throw new AssertionError(rule + ": " + found);
    }
    return found.get(0);
  }

  List<String> subjects(String rule) {
    return by(rule).stream().map(Finding::subject).toList();
  }

  Length length(String text) {
    Unit unit = plan.lengths().unit();
    String number = text.replace(" mm", "").replace("\"", "");
    return new LengthGrammar(unit).read(number).orElseThrow();
  }
}
