package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.framing.Frames;
import org.slatwright.design.framing.Marks;

/**
 * Slats that lie in the same places: a shelf, or, where its bays differ from one another, the row
 * of one bay; with the rails and uprights that belong to it.
 *
 * @param name which shelves or rows are all like this one
 * @param rows of slats from the left, each from the front back
 * @param frames from the left, those that the rows lie on
 * @param fasteners of the rows
 */
record ShelfUnit(
    String name, List<List<Piece>> rows, List<Frame> frames, List<Fastener> fasteners) {

  private static final String BAY = " bay ";

  /** The uprights of a frame, and the rail under the slats. */
  record Frame(List<Piece> uprights, Piece rail) {

    Box upright() {
      return uprights.get(0).box();
    }
  }

  /** Where a slat lies, whatever its height; its bay does not matter where bays differ. */
  private record Place(String mark, Length left, Length right, Length front, Length back) {

    static Place of(Piece slat, Length start) {
      Box box = slat.box();
      return new Place(
          slat.part().mark(),
          box.low().x().minus(start),
          box.high().x().minus(start),
          box.low().y(),
          box.high().y());
    }
  }

  /** The lowest shelf, all of its bays. */
  static ShelfUnit lowest(Assembly assembly) {
    return of(assembly, "1", rows(shelves(assembly).get(0)));
  }

  /** All that differ, in the order of the first of their shelves from the floor up. */
  static List<ShelfUnit> of(Assembly assembly) {
    List<Group> shelves = shelves(assembly);
    Map<List<Place>, List<ShelfUnit>> alike = new LinkedHashMap<>();
    for (int i = 0; i < shelves.size(); i++) {
      for (ShelfUnit unit : units(assembly, shelves.get(i), String.valueOf(i + 1))) {
        alike.computeIfAbsent(unit.places(), key -> new ArrayList<>()).add(unit);
      }
    }
    return alike.values().stream().map(ShelfUnit::together).toList();
  }

  private static List<Group> shelves(Assembly assembly) {
    return assembly.groups().stream().filter(group -> group.kind() == Group.Kind.SHELF).toList();
  }

  private static List<List<Piece>> rows(Group shelf) {
    Map<Length, List<Piece>> byLeft =
        shelf.pieces().stream()
            .collect(
                Collectors.groupingBy(
                    slat -> slat.box().low().x(), TreeMap::new, Collectors.toList()));
    return List.copyOf(byLeft.values());
  }

  private static List<ShelfUnit> units(Assembly assembly, Group shelf, String number) {
    List<List<Piece>> rows = rows(shelf);
    if (rows.stream().map(ShelfUnit::fronts).distinct().count() == 1) {
      return List.of(of(assembly, number, rows));
    }
    List<ShelfUnit> units = new ArrayList<>();
    for (List<Piece> row : rows) {
      units.add(of(assembly, number + BAY + (units.size() + 1), List.of(row)));
    }
    return units;
  }

  private static List<Length> fronts(List<Piece> row) {
    return row.stream()
        .flatMap(slat -> Stream.of(slat.box().low().y(), slat.box().high().y()))
        .toList();
  }

  private static ShelfUnit of(Assembly assembly, String name, List<List<Piece>> rows) {
    List<Frame> frames = new ArrayList<>();
    for (Group group : new Frames(assembly).all()) {
      Frames.rails(group).stream()
          .filter(rail -> rows.stream().flatMap(List::stream).anyMatch(slat -> bears(rail, slat)))
          .findFirst()
          .ifPresent(
              rail ->
                  frames.add(
                      new Frame(
                          group.pieces().stream()
                              .filter(piece -> piece.part().role() == Role.UPRIGHT)
                              .toList(),
                          rail)));
    }
    Set<String> slats =
        rows.stream().flatMap(List::stream).map(Piece::id).collect(Collectors.toSet());
    List<Fastener> fasteners =
        assembly.fasteners().stream().filter(each -> slats.contains(each.through().id())).toList();
    return new ShelfUnit(name, rows, frames, fasteners);
  }

  /** Whether a slat bears on a rail. */
  static boolean bears(Piece rail, Piece slat) {
    return rail.box().high().z().equals(slat.box().low().z())
        && rail.box().low().x().isLessThan(slat.box().high().x())
        && slat.box().low().x().isLessThan(rail.box().high().x());
  }

  private List<Place> places() {
    Length start = frames.get(0).upright().low().x();
    return slats().stream().map(slat -> Place.of(slat, start)).toList();
  }

  /** Whole shelves are counted, rows of a bay are each named in full. */
  private static ShelfUnit together(List<ShelfUnit> alike) {
    ShelfUnit first = alike.get(0);
    List<String> names = alike.stream().map(ShelfUnit::name).toList();
    String name = (names.size() == 1 ? "Shelf " : "Shelves ") + Marks.of(names);
    if (first.name.contains(BAY)) {
      name = "Shelf " + String.join(", shelf ", names);
    }
    return new ShelfUnit(name, first.rows, first.frames, first.fasteners);
  }

  List<Piece> slats() {
    return rows.stream().flatMap(List::stream).toList();
  }

  /** Alone: slats, rails and uprights. */
  Assembly assembly() {
    List<Piece> pieces = new ArrayList<>(slats());
    for (Frame frame : frames) {
      pieces.add(frame.rail());
      pieces.addAll(frame.uprights());
    }
    return new Assembly(
        pieces.stream().map(Piece::part).distinct().toList(),
        pieces,
        List.of(),
        List.of(),
        List.of());
  }

  /** From the front of the rails back: every edge of a slat, and both ends of the rails. */
  Collection<Length> depths() {
    Box rail = frames.get(0).rail().box();
    List<Length> depths = new ArrayList<>(fronts(rows.get(0)));
    depths.add(rail.low().y());
    depths.add(rail.high().y());
    return depths.stream().distinct().sorted().toList();
  }
}
