package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Role;
import org.slatwright.design.drafting.FrameSketch;
import org.slatwright.design.framing.Frames;
import org.slatwright.design.templates.printing.Draft;

/**
 * The drilled face of an upright at its full length, seen from outside with the floor end below:
 * the face edge is then at the right.
 */
final class UprightDrilling {

  private final Assembly assembly;
  private final LengthFormat lengths;
  private final Part upright;

  private UprightDrilling(Assembly assembly, LengthFormat lengths, Part upright) {
    this.assembly = assembly;
    this.lengths = lengths;
    this.upright = upright;
  }

  /** One for each different upright. */
  static List<Draft> of(Assembly assembly, LengthFormat lengths) {
    return assembly.parts().stream()
        .filter(part -> part.role() == Role.UPRIGHT)
        .map(part -> new UprightDrilling(assembly, lengths, part).draft())
        .toList();
  }

  private Draft draft() {
    return new Strip(
            "templates/" + upright.mark() + "-drilling",
            "Drilled face of upright " + upright.mark(),
            heading(),
            Optional.of(sketch()),
            face(),
            LineKind.HIDDEN,
            new Labels(marks()),
            new Labels(zones()),
            "floor end",
            "fold under",
            use())
        .draft();
  }

  private List<String> heading() {
    List<String> lines = new ArrayList<>();
    lines.add("Scale 1:1, heights in " + Advice.units(lengths) + " from the floor end");
    lines.add("Face side towards you, floor end below, face edge at the right");
    upright.holes().stream()
        .map(hole -> bit(hole) + " through, " + show(hole.across()) + " from the face edge")
        .distinct()
        .forEach(lines::add);
    lines.add("Tinted: where a rail meets the back of it");
    lines.add("For all " + upright.quantity() + " uprights:");
    frames().map(this::pair).forEach(lines::add);
    lines.add("Each frame from above: face sides thick, a triangle on face edges");
    return lines;
  }

  private String bit(Hole hole) {
    return "Ø " + show(hole.diameter());
  }

  private String pair(Group frame) {
    List<Piece> uprights =
        frame.pieces().stream().filter(piece -> piece.part() == upright).toList();
    String pieces =
        uprights.stream()
            .map(piece -> piece.id() + (isFront(piece, uprights) ? " front" : " rear"))
            .collect(Collectors.joining(", "));
    return new Frames(assembly).name(frame) + ": " + pieces;
  }

  private static boolean isFront(Piece piece, List<Piece> pair) {
    return pair.stream()
        .noneMatch(other -> other.box().low().y().isLessThan(piece.box().low().y()));
  }

  private Stream<Group> frames() {
    return new Frames(assembly)
        .all().stream()
            .filter(frame -> frame.pieces().stream().anyMatch(piece -> piece.part() == upright));
  }

  /** Of the first frame; the others stand alike. */
  private FrameSketch sketch() {
    List<Joint> ends =
        assembly.joints().stream()
            .filter(joint -> joint.rail().equals(rails().get(0).joint().rail()))
            .sorted(Comparator.comparing(joint -> joint.upright().box().low().y()))
            .toList();
    return new FrameSketch(ends.get(0), ends.get(ends.size() - 1));
  }

  private MarkedFace face() {
    Length width = upright.shape().width();
    List<MarkedFace.Spot> spots =
        upright.holes().stream()
            .map(
                hole ->
                    new MarkedFace.Spot(
                        new Point2(width.minus(hole.across()), hole.along()),
                        hole.diameter(),
                        hole.name()))
            .toList();
    return new MarkedFace(
        width,
        upright.shape().length(),
        rails().stream().map(RailOnUpright::extent).toList(),
        List.of(),
        rails().stream().flatMap(rail -> Stream.of(rail.underside(), rail.top())).toList(),
        spots);
  }

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    marks.add(mark("floor end", Length.ZERO));
    for (RailOnUpright rail : rails()) {
      marks.add(mark("underside", rail.underside()));
      rail.joint().pins().forEach(pin -> marks.add(hole(pin.uprightHole())));
      marks.add(mark("top", rail.top()));
    }
    marks.add(mark("top end", upright.shape().length()));
    return marks;
  }

  private Mark hole(Hole hole) {
    return mark(hole.name(), hole.along());
  }

  private Mark mark(String what, Length at) {
    return new Mark(at, what + " " + lengths.number(at));
  }

  private List<Mark> zones() {
    List<Mark> zones = new ArrayList<>();
    for (RailOnUpright rail : rails()) {
      String mark = rail.joint().rail().part().mark();
      Length middle = rail.underside().plus(rail.top()).half();
      zones.add(new Mark(middle, "rail " + mark + ", shelf " + (zones.size() + 1)));
    }
    return zones;
  }

  /** Those of the first of these uprights, from the floor up. */
  private List<RailOnUpright> rails() {
    Piece first =
        assembly.pieces().stream()
            .filter(piece -> piece.part() == upright)
            .findFirst()
            .orElseThrow();
    return assembly.joints().stream()
        .filter(joint -> joint.upright().equals(first))
        .map(RailOnUpright::new)
        .toList();
  }

  private List<String> use() {
    return List.of(
        Advice.CHECK,
        Advice.SAME_DAY,
        "Floor end and top end must be " + show(upright.shape().length()) + " apart.",
        "Lay the strip on the face side, the floor end flush and the face edge at the right; fold it"
            + " down over both edges along the dashed lines and under the floor end, and tape it"
            + " where it cannot shift.",
        "Before the paper comes off, pencil both edges of every rail on the corners of the wood.",
        Advice.PRICK,
        "Use the same strip, the same way up, for every upright: front and rear stand face side"
            + " outwards, a rear one being a front one turned about. Then lay all of them side by side,"
            + " floor ends flush: every mark must run on across them in one line.",
        Advice.DRILLING);
  }

  private String show(Length length) {
    return lengths.withUnit(length);
  }
}
