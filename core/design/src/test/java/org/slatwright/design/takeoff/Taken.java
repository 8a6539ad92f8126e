package org.slatwright.design.takeoff;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitrary;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Sizing;

/** A rack file and what is taken off the rack it asks for. */
record Taken(String yaml, Rack rack, Assembly assembly, Quantities all) {

  static Taken of(String yaml, String... settings) {
    try {
      Rack rack =
          Sizing.solve(
              RackFileReader.read(
                  yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of(settings)));
      Assembly assembly = Framing.frame(rack);
      return new Taken(yaml, rack, assembly, TakeOff.of(assembly, rack));
    } catch (RackFileException e) {
      throw new AssertionError(yaml, e);
    }
  }

  static Arbitrary<Taken> any() {
    return RandomRacks.solvable().map(Taken::of);
  }

  /** What one piece of the part with that mark weighs. */
  Mass each(String mark) {
    return all.parts().stream()
        .filter(part -> part.part().mark().equals(mark))
        .map(Quantities.PartMass::each)
        .findFirst()
        .orElseThrow();
  }

  /** What a failing property shows. */
  @Override
  public String toString() {
    return yaml;
  }
}
