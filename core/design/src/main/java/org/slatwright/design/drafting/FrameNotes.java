package org.slatwright.design.drafting;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.framing.Diagonal;
import org.slatwright.design.framing.Frames;

/** What the frame sheet says in words. */
final class FrameNotes {

  private FrameNotes() {}

  /** A sentence or two each. */
  static List<String> of(Assembly assembly, Assembly frame, LengthFormat lengths) {
    return List.of(
        frames(new Frames(assembly).all()),
        "Numbers at the left and at the right count from the floor: lay a story rod beside every"
            + " upright and mark none of them from another.",
        square(frame.extent(), lengths),
        "From above, at the right: face sides are thick and look out to the front and to the rear;"
            + " a triangle stands on each face edge.");
  }

  /** The same on several sheets. */
  static List<String> ofParts(List<String> notes, int parts) {
    return parts == 1
        ? notes
        : Stream.concat(
                Stream.of(
                    "Drawn in "
                        + parts
                        + " parts from the floor up: the highest rail of one is the lowest of the"
                        + " next."),
                notes.stream())
            .toList();
  }

  private static String frames(List<Group> frames) {
    String uprights =
        frames.stream()
            .map(
                frame ->
                    frame.pieces().stream()
                        .filter(piece -> piece.part().role() == Role.UPRIGHT)
                        .map(Piece::id)
                        .collect(Collectors.joining(" and ")))
            .collect(Collectors.joining(", "));
    return (frames.size() == 2 ? "Both frames" : "All " + frames.size() + " frames")
        + " are alike. Their uprights from the left, front and rear: "
        + uprights
        + ".";
  }

  private static String square(Box outside, LengthFormat lengths) {
    return "The frame is square when both diagonals over its outside, from corner to corner, are "
        + lengths.withUnit(
            Diagonal.onTape(outside.size(Axis.Y), outside.size(Axis.Z), lengths.unit()))
        + ".";
  }
}
