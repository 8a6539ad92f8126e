package org.slatwright.design.steps;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Quantities;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.Step;
import org.slatwright.design.jig.MadeJig;
import org.slatwright.design.sizing.Rack;

/** What all stages of the work ask of a plan. */
record Build(
    Rack rack, Assembly assembly, Quantities quantities, MadeJig jig, CuttingPlan cutting) {

  List<Group> frames() {
    return groups(Group.Kind.FRAME);
  }

  /** From the floor up. */
  List<Group> shelves() {
    return groups(Group.Kind.SHELF);
  }

  private List<Group> groups(Group.Kind kind) {
    return assembly.groups().stream().filter(group -> group.kind() == kind).toList();
  }

  /** Of those roles, how many pieces of each part there are in a group. */
  static List<Step.Parts> parts(Group group, Role... roles) {
    return parts(pieces(group, roles));
  }

  /** How many pieces of each part there are. */
  static List<Step.Parts> parts(List<Piece> pieces) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    pieces.forEach(piece -> counts.merge(piece.part().mark(), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(each -> new Step.Parts(each.getKey(), each.getValue()))
        .toList();
  }

  static List<String> ids(Group group, Role... roles) {
    return pieces(group, roles).stream().map(Piece::id).toList();
  }

  private static List<Piece> pieces(Group group, Role... roles) {
    List<Role> wanted = List.of(roles);
    return group.pieces().stream().filter(piece -> wanted.contains(piece.part().role())).toList();
  }

  /** Spare pieces of that length, which the cutting plan may not have where no timber is listed. */
  List<Step.Parts> spares(Length length) {
    return cutting.spares().stream()
        .filter(spare -> spare.length().equals(length))
        .map(Build::all)
        .toList();
  }

  private static Step.Parts all(SparePiece spare) {
    return new Step.Parts(spare.mark(), spare.wanted());
  }

  String fixing() {
    return rack.fixing().kind().word();
  }
}
