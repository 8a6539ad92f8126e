package org.slatwright.design.framing;

import java.util.List;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;

/** The frames of a rack, from the left. */
public record Frames(List<Group> all) {

  /** Of a rack. */
  public Frames(Assembly assembly) {
    this(assembly.groups().stream().filter(group -> group.kind() == Group.Kind.FRAME).toList());
  }

  /** As one speaks of it, with a small letter: {@code left frame}, {@code frame 2}. */
  public String name(Group frame) {
    int index = all.indexOf(frame);
    if (all.size() == 2) {
      return index == 0 ? "left frame" : "right frame";
    }
    return "frame " + (index + 1) + " from the left";
  }

  /** The rails of a frame, from the floor up. */
  public static List<Piece> rails(Group frame) {
    return frame.pieces().stream().filter(piece -> piece.part().role() == Role.RAIL).toList();
  }
}
