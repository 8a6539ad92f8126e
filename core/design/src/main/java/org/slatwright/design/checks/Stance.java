package org.slatwright.design.checks;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point3;
import org.slatwright.api.model.Role;
import org.slatwright.design.mechanics.PointMass;
import org.slatwright.design.sizing.Rack;

/**
 * How a rack stands and what weighs on it.
 *
 * <p>A load stands spread over the slats of its shelf, its centre of gravity at half of the clear
 * height; on the top shelf, which nothing is above, goods are taken as high as the clear height
 * below it. So they are everywhere as high as the rack has room for.
 *
 * @param feet the box around all uprights
 * @param empty the rack alone
 * @param loads of each shelf, from the floor up
 */
record Stance(Box feet, PointMass empty, List<PointMass> loads) {

  Stance {
    loads = List.copyOf(loads);
  }

  static Stance of(Design design) {
    return new Stance(
        around(design.assembly().pieces(Role.UPRIGHT)),
        at(design.quantities().mass().kg(), design.quantities().centreOfGravity()),
        loads(design.rack(), shelves(design.assembly())));
  }

  /**
   * The rack empty, and loaded from the top shelf down to each of the others. Of all the ways to
   * put anything from nothing to the full load on any of its shelves, one of these leans least far
   * before it tips: how far is a ratio of sums over the shelves, all loads stand equally far behind
   * the edge, and so each that stands higher than the rest lessens it, the more the heavier it is.
   */
  Stream<Loading> topHeavy() {
    return IntStream.rangeClosed(0, loads.size()).mapToObj(this::fromTheTop);
  }

  private Loading fromTheTop(int shelves) {
    PointMass all =
        loads.subList(loads.size() - shelves, loads.size()).stream().reduce(empty, PointMass::plus);
    return new Loading(words(shelves), all);
  }

  private String words(int shelves) {
    if (shelves == 0) {
      return "empty";
    }
    if (shelves == loads.size()) {
      return "fully loaded";
    }
    return shelves == 1
        ? "loaded on the top shelf alone"
        : "loaded on the top " + shelves + " shelves alone";
  }

  private static List<PointMass> loads(Rack rack, List<Box> shelves) {
    return IntStream.range(0, shelves.size())
        .mapToObj(shelf -> at(rack.load().kg(), above(shelves.get(shelf), clear(rack, shelf))))
        .toList();
  }

  private static Point3 above(Box slats, Length clear) {
    return new Point3(
        middle(slats.low().x(), slats.high().x()),
        middle(slats.low().y(), slats.high().y()),
        slats.high().z().plus(clear.half()));
  }

  private static Length clear(Rack rack, int shelf) {
    List<Length> openings = rack.openings();
    if (openings.isEmpty()) {
      return rack.foot();
    }
    return openings.get(Math.min(shelf, openings.size() - 1));
  }

  private static List<Box> shelves(Assembly assembly) {
    return assembly.groups().stream()
        .filter(group -> group.kind() == Group.Kind.SHELF)
        .map(group -> around(group.pieces()))
        .toList();
  }

  private static Box around(List<Piece> pieces) {
    return pieces.stream().map(Piece::box).reduce(Box::around).orElseThrow();
  }

  private static Length middle(Length from, Length to) {
    return from.plus(to).half();
  }

  private static PointMass at(double kg, Point3 centre) {
    return new PointMass(kg, centre.x().inMm(), centre.y().inMm(), centre.z().inMm());
  }

  /**
   * The rack with some load on it.
   *
   * @param words how it is loaded: {@code fully loaded}
   */
  record Loading(String words, PointMass all) {}
}
