package org.slatwright.api.model;

import java.util.List;

/**
 * The whole rack: each part once, each piece in its place, and what holds them together.
 *
 * @param parts the unique parts, in the order of the parts list
 * @param pieces every piece, grouped by part in that order
 * @param groups frames from the left, then shelves from the floor
 * @param joints every rail end
 * @param fasteners every brad or screw
 */
public record Assembly(
    List<Part> parts,
    List<Piece> pieces,
    List<Group> groups,
    List<Joint> joints,
    List<Fastener> fasteners) {

  public Assembly {
    parts = List.copyOf(parts);
    pieces = List.copyOf(pieces);
    groups = List.copyOf(groups);
    joints = List.copyOf(joints);
    fasteners = List.copyOf(fasteners);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("an assembly has at least one piece");
    }
  }

  /** The box around all pieces, in rack coordinates. */
  public Box extent() {
    return pieces.stream().map(Piece::box).reduce(Box::around).orElseThrow();
  }

  /** The pieces of one role, in order. */
  public List<Piece> pieces(Role role) {
    return pieces.stream().filter(piece -> piece.part().role() == role).toList();
  }
}
