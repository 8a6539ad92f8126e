package org.slatwright.design.drafting;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitrary;
import org.slatwright.api.model.Assembly;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Sizing;

/** Random racks as the parts that they are built of. */
final class FramedRacks {

  private FramedRacks() {}

  static Arbitrary<Assembly> solvable() {
    return RandomRacks.solvable().map(FramedRacks::framed);
  }

  private static Assembly framed(String yaml) {
    try {
      byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
      return Framing.frame(Sizing.solve(RackFileReader.read(bytes, "rack.yaml", List.of())));
    } catch (RackFileException e) {
      throw new AssertionError(yaml, e);
    }
  }
}
