package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.design.framing.Frames;
import org.slatwright.design.templates.printing.Draft;

/** Where slats and brads lie on the upper edge of a rail, its front end below. */
final class SlatSpacing {

  private static final String NAME = "templates/slat-spacing";

  private final LengthFormat lengths;
  private final RowOnRail row;
  private final RowPlaces places;
  private final String nail;

  private SlatSpacing(LengthFormat lengths, RowOnRail row, RowPlaces places, String nail) {
    this.lengths = lengths;
    this.row = row;
    this.places = places;
    this.nail = nail;
  }

  /** One for each different row on a rail, in the order of the shelves, then of the frames. */
  static List<Draft> of(Assembly assembly, LengthFormat lengths) {
    String nail =
        assembly.fasteners().stream()
            .map(Fastener::kind)
            .map(Fastener.Kind::word)
            .findFirst()
            .orElse("brad");
    List<Draft> drafts = new ArrayList<>();
    rows(assembly)
        .forEach(
            (row, places) -> {
              String name = drafts.isEmpty() ? NAME : NAME + "-" + (drafts.size() + 1);
              drafts.add(new SlatSpacing(lengths, row, places, nail).draft(name));
            });
    return drafts;
  }

  /** Where each different row lies. */
  private static Map<RowOnRail, RowPlaces> rows(Assembly assembly) {
    Map<RowOnRail, RowPlaces> rows = new LinkedHashMap<>();
    Frames frames = new Frames(assembly);
    List<Group> shelves =
        assembly.groups().stream().filter(group -> group.kind() == Group.Kind.SHELF).toList();
    for (int shelf = 0; shelf < shelves.size(); shelf++) {
      for (Group frame : frames.all()) {
        Piece rail = Frames.rails(frame).get(shelf);
        for (List<Piece> slats : runs(shelves.get(shelf), rail)) {
          rows.computeIfAbsent(RowOnRail.of(assembly, rail, slats), row -> new RowPlaces())
              .add(shelf + 1, frames.name(frame), slats);
        }
      }
    }
    return rows;
  }

  /** The slats that cross a rail, those that lie beside one another together, from the left. */
  private static List<List<Piece>> runs(Group shelf, Piece rail) {
    return List.copyOf(
        shelf.pieces().stream()
            .filter(
                slat ->
                    slat.box().low().x().isLessThan(rail.box().high().x())
                        && rail.box().low().x().isLessThan(slat.box().high().x()))
            .collect(
                Collectors.groupingBy(
                    slat -> slat.box().low().x(), TreeMap::new, Collectors.toList()))
            .values());
  }

  private Draft draft(String name) {
    return new Strip(
            name,
            "Slats on the upper edge of a rail",
            heading(),
            Optional.empty(),
            face(),
            LineKind.HIDDEN,
            new Labels(marks()),
            new Labels(zones()),
            "front end",
            "butts against the upright",
            use())
        .draft();
  }

  private MarkedFace face() {
    return new MarkedFace(
        row.railWidth(),
        row.railLength(),
        row.slats(),
        row.dowels(),
        List.of(),
        row.nails().stream()
            .map(each -> new MarkedFace.Spot(each.centre(), each.diameter(), ""))
            .toList());
  }

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    marks.add(mark("front end", Length.ZERO));
    row.slats().stream()
        .flatMap(slat -> Stream.of(slat.low().y(), slat.high().y()))
        .filter(edge -> edge.isPositive() && edge.isLessThan(row.railLength()))
        .forEach(edge -> marks.add(new Mark(edge, lengths.number(edge))));
    row.nails().forEach(each -> marks.add(mark(nail, each.centre().y())));
    marks.add(mark("rear end", row.railLength()));
    return marks;
  }

  private Mark mark(String what, Length at) {
    return new Mark(at, what + " " + lengths.number(at));
  }

  /** Slats and what lies between them. */
  private List<Mark> zones() {
    List<Mark> zones = new ArrayList<>();
    Length end = Length.ZERO;
    for (int i = 0; i < row.slats().size(); i++) {
      Extent slat = row.slats().get(i);
      gap(zones, end, slat.low().y());
      zone(zones, places.marks(i) + ",", slat.low().y(), slat.high().y());
      end = slat.high().y();
    }
    gap(zones, end, row.railLength());
    return zones;
  }

  private void gap(List<Mark> zones, Length from, Length to) {
    if (from.isLessThan(to)) {
      boolean atAnEnd = from.isZero() || to.equals(row.railLength());
      zone(zones, atAnEnd ? "margin" : "gap", from, to);
    }
  }

  private void zone(List<Mark> zones, String what, Length from, Length to) {
    zones.add(new Mark(from.plus(to).half(), what + " " + lengths.number(to.minus(from))));
  }

  private List<String> heading() {
    List<String> lines = new ArrayList<>();
    lines.add("Scale 1:1, " + Advice.units(lengths) + " from the front end of the rail");
    lines.add("Seen from above: front below, left side of the rack at the left");
    lines.add("Tinted: a slat; dashed: a dowel inside the rail");
    lines.addAll(places.words());
    return lines;
  }

  private List<String> use() {
    return List.of(
        Advice.CHECK,
        Advice.SAME_DAY,
        "Cut it off along the front end. Lay it on the upper edge of the rail between the uprights,"
            + " the front end against the front one, and fold it down over both sides along the"
            + " dashed lines and up the rear upright at its other end.",
        "Mark both edges of every slat on the rail, then prick the "
            + nail
            + "s through, and square the edges over. Where only half of a rail is tinted, the other"
            + " half carries the slats of the next bay.",
        "Prick the place of each "
            + nail
            + " on the slats by the same strip, laid across their upper sides.",
        "Wear eye protection when nailing and drilling pilot holes, and hold the slat a hand's"
            + " breadth away: what follows the grain comes out at the side.");
  }
}
