package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Role;
import org.slatwright.design.framing.Frames;
import org.slatwright.design.framing.Marks;
import org.slatwright.design.templates.printing.Draft;

/** Every height of the rack on one stick that stands on the floor; its left edge is the rule. */
final class StoryRod {

  private static final Length FACE = Length.mm(12);

  private final Assembly assembly;
  private final LengthFormat lengths;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Extent> wood = new ArrayList<>();
  private final List<Length> lines = new ArrayList<>();

  private StoryRod(Assembly assembly, LengthFormat lengths) {
    this.assembly = assembly;
    this.lengths = lengths;
  }

  static Draft of(Assembly assembly, LengthFormat lengths) {
    return new StoryRod(assembly, lengths).draft();
  }

  private Draft draft() {
    Piece upright = assembly.pieces(Role.UPRIGHT).get(0);
    Length top = upright.box().high().z();
    mark("floor", Length.ZERO);
    rails();
    dowels(upright);
    slats();
    mark("top of " + upright.part().mark(), top);
    MarkedFace face = new MarkedFace(FACE, top, wood, List.of(), lines, List.of());
    return new Strip(
            "templates/story-rod",
            "Story rod",
            List.of(
                "Scale 1:1, heights in " + Advice.units(lengths) + " above the floor",
                "Tinted: rails and slats"),
            Optional.empty(),
            face,
            LineKind.THIN,
            new Labels(marks),
            new Labels(List.of()),
            "floor",
            "end of the stick",
            use())
        .draft();
  }

  private void rails() {
    for (Piece rail : Frames.rails(new Frames(assembly).all().get(0))) {
      Length underside = rail.box().low().z();
      Length top = rail.box().high().z();
      mark(rail.part().mark() + " underside", underside);
      mark(rail.part().mark() + " top", top);
      wood(underside, top);
    }
  }

  private void dowels(Piece upright) {
    assembly.joints().stream()
        .filter(joint -> joint.upright().equals(upright))
        .flatMap(joint -> joint.pins().stream())
        .map(Joint.Pin::uprightHole)
        .forEach(
            hole -> {
              Length axis = upright.bore(hole).mouth().z();
              mark("dowel " + hole.name(), axis);
              lines.add(axis);
            });
  }

  /** Shelf by shelf; boards of several thicknesses end at several heights. */
  private void slats() {
    int shelf = 0;
    for (Group group : assembly.groups()) {
      if (group.kind() == Group.Kind.SHELF) {
        shelf++;
        Map<Length, List<Piece>> byTop =
            group.pieces().stream()
                .collect(
                    Collectors.groupingBy(
                        slat -> slat.box().high().z(), TreeMap::new, Collectors.toList()));
        for (Map.Entry<Length, List<Piece>> each : byTop.entrySet()) {
          List<String> parts =
              each.getValue().stream().map(slat -> slat.part().mark()).distinct().toList();
          mark("shelf " + shelf + ": " + Marks.of(parts) + " top", each.getKey());
          wood(each.getValue().get(0).box().low().z(), each.getKey());
        }
      }
    }
  }

  private void mark(String what, Length at) {
    marks.add(new Mark(at, what + " " + lengths.number(at)));
  }

  private void wood(Length from, Length to) {
    wood.add(new Extent(new Point2(Length.ZERO, from), new Point2(FACE, to)));
  }

  private List<String> use() {
    return List.of(
        Advice.CHECK,
        Advice.SAME_DAY,
        "Glue it on a straight stick, its left edge along an arris and the floor line level with the"
            + " end, and saw the stick off at the top line. When sawing, wear eye protection and"
            + " keep hands out of the line of the blade.",
        "Lay a long rule beside it before the glue sets: the last number must be where it says.",
        "Mark every upright from the rod and none from another upright, the floor end always at the"
            + " same end; stand it in the glued rack to check heights.");
  }
}
