package org.slatwright.design.templates;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.jig.JigMaker;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Sizing;
import org.slatwright.design.templates.printing.Draft;

/** A rack file, how its rack is framed, and its templates before they are printed. */
public record Drawn(
    String yaml, Rack rack, Assembly assembly, Optional<Jig> jig, List<Draft> drafts) {

  private static final Path EXAMPLES = Path.of("../../examples/racks");

  static Drawn of(String yaml, String... settings) {
    try {
      byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
      return of(yaml, Sizing.solve(RackFileReader.read(bytes, "rack.yaml", List.of(settings))));
    } catch (RackFileException e) {
      throw new AssertionError(yaml, e);
    }
  }

  static Drawn of(Rack rack) {
    return of(rack.title(), rack);
  }

  private static Drawn of(String yaml, Rack rack) {
    Assembly assembly = Framing.frame(rack);
    Optional<Jig> jig = JigMaker.make(rack).jig();
    return new Drawn(yaml, rack, assembly, jig, FullScale.drafts(rack, assembly, jig));
  }

  static Drawn example(String name, String... settings) {
    try {
      return of(Files.readString(EXAMPLES.resolve(name + ".yaml")), settings);
    } catch (IOException e) {
      throw new AssertionError(name, e);
    }
  }

  /** Every example rack. */
  public static List<Drawn> examples() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".yaml"))
          .sorted()
          .map(file -> example(file.replace(".yaml", "")))
          .toList();
    }
  }

  /** Random racks, in mm and in inches, of sawn slats and of boards. */
  static Arbitrary<Drawn> any() {
    return Arbitraries.oneOf(RandomRacks.solvable(), RandomRacks.ofBoards()).map(Drawn::of);
  }

  LengthFormat lengths() {
    return new LengthFormat(rack.units());
  }

  Draft draft(String name) {
    return drafts.stream()
        .filter(draft -> draft.name().equals("templates/" + name))
        .findFirst()
        .orElseThrow();
  }

  /** What a failing property shows. */
  @Override
  public String toString() {
    return yaml;
  }
}
