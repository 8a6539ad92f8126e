package org.slatwright.design.framing;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.design.sizing.Rack;

/** Builds the neutral model of a rack: every part, piece, joint and fastener. */
public final class Framing {

  private Framing() {}

  /**
   * The assembly of a solved rack. Its shelves, each a group, hold the slats in the order of {@link
   * Rack#rows}, those of a row from the front back.
   */
  public static Assembly frame(Rack rack) {
    Grid grid = new Grid(rack);
    PartSet parts = PartSet.of(rack, grid);
    PieceIds ids = new PieceIds();
    FrameBuilder frames = new FrameBuilder(rack, grid, parts, ids);
    List<Group> groups = new ArrayList<>();
    for (int frame = 0; frame < rack.frames(); frame++) {
      groups.add(frames.build(frame));
    }
    ShelfBuilder shelves = new ShelfBuilder(rack, grid, parts, ids, frames.rails());
    for (int shelf = 0; shelf < rack.shelves(); shelf++) {
      groups.add(shelves.build(shelf));
    }
    return new Assembly(
        parts.all(), byPart(parts.all(), groups), groups, frames.joints(), shelves.fasteners());
  }

  private static List<Piece> byPart(List<Part> parts, List<Group> groups) {
    return parts.stream()
        .flatMap(
            part ->
                groups.stream()
                    .flatMap(group -> group.pieces().stream())
                    .filter(piece -> piece.part() == part))
        .toList();
  }
}
