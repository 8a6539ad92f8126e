package org.slatwright.design.checks;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.jig.JigMaker;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Sizing;
import org.slatwright.design.takeoff.TakeOff;

/** Rack files from text, up to what is checked. */
final class Designs {

  private Designs() {}

  static Design of(String yaml, String... settings) throws RackFileException {
    return of(yaml, List.of(settings));
  }

  static Design of(String yaml, List<String> settings) throws RackFileException {
    byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
    Rack rack = Sizing.solve(RackFileReader.read(bytes, "rack.yaml", settings));
    Assembly assembly = Framing.frame(rack);
    return new Design(rack, assembly, TakeOff.of(assembly, rack), JigMaker.make(rack).jig());
  }

  /** What a rule finds, which must be one thing. */
  static Finding finding(String rule, String yaml, String... settings) throws RackFileException {
    List<Finding> found = findings(rule, yaml, settings);
    if (found.size() != 1) {
      throw new AssertionError(rule + " found " + found);
    }
    return found.get(0);
  }

  static List<Finding> findings(String rule, String yaml, String... settings)
      throws RackFileException {
    return Checks.of(of(yaml, settings)).stream()
        .filter(finding -> finding.rule().equals(rule))
        .toList();
  }
}
