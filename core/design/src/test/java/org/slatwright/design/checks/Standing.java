package org.slatwright.design.checks;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Sizing;
import org.slatwright.design.takeoff.TakeOff;

/** A rack file, the rack that it asks for, and how that stands. */
record Standing(String yaml, Design design, List<Finding> findings) {

  static Standing of(String yaml, String... settings) {
    try {
      Rack rack =
          Sizing.solve(
              RackFileReader.read(
                  yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of(settings)));
      Assembly assembly = Framing.frame(rack);
      Design design = new Design(rack, assembly, TakeOff.of(assembly, rack), Optional.empty());
      return new Standing(yaml, design, new Stability().check(design).toList());
    } catch (RackFileException e) {
      throw new AssertionError(yaml + List.of(settings) + e.problems(), e);
    }
  }

  Optional<Finding> found(String rule) {
    return findings.stream().filter(finding -> finding.rule().equals(rule)).findFirst();
  }

  Finding finding(String rule) {
    return found(rule).orElseThrow();
  }

  Finding.Severity severity(String rule) {
    return finding(rule).severity();
  }

  Stance stance() {
    return Stance.of(design);
  }

  /** What a failing property shows. */
  @Override
  public String toString() {
    return yaml;
  }
}
