package org.slatwright.design.framing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitrary;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.RandomRacks;
import org.slatwright.design.sizing.Sizing;

/** A rack file, the rack that it asks for, and how that is framed. */
record Framed(String yaml, Rack rack, Assembly assembly) {

  static Framed of(String yaml, String... settings) throws RackFileException {
    Rack rack =
        Sizing.solve(
            RackFileReader.read(
                yaml.getBytes(StandardCharsets.UTF_8), "rack.yaml", List.of(settings)));
    return new Framed(yaml, rack, Framing.frame(rack));
  }

  /** Random racks, framed. */
  static Arbitrary<Framed> any() {
    return RandomRacks.solvable().map(Framed::solvable);
  }

  private static Framed solvable(String yaml) {
    try {
      return of(yaml);
    } catch (RackFileException e) {
      throw new AssertionError(yaml, e);
    }
  }

  List<Group> groups(Group.Kind kind) {
    return assembly.groups().stream().filter(group -> group.kind() == kind).toList();
  }

  /** The slats of a shelf, counted from 0 at the floor. */
  List<Piece> slats(int shelf) {
    return groups(Group.Kind.SHELF).get(shelf).pieces();
  }

  /** The rails of a frame, counted from 0 at the left, each from the floor up. */
  List<Piece> rails(int frame) {
    return groups(Group.Kind.FRAME).get(frame).pieces().stream()
        .filter(piece -> piece.part().role() == Role.RAIL)
        .toList();
  }

  Piece piece(String id) {
    return assembly.pieces().stream()
        .filter(piece -> piece.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  Length total(String chain) {
    return rack.chains().stream()
        .filter(candidate -> candidate.name().equals(chain))
        .map(Chain::total)
        .findFirst()
        .orElseThrow();
  }

  /** What a failing property shows. */
  @Override
  public String toString() {
    return yaml;
  }
}
