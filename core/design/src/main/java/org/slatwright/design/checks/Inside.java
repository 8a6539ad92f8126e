package org.slatwright.design.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;

/**
 * What lies inside the pieces of an assembly, by the piece it is in, so that only neighbours are
 * compared.
 */
record Inside(Map<String, List<Rod>> shanks, Map<String, List<Rod>> dowelHoles) {

  static Inside of(Assembly assembly) {
    Map<String, List<Rod>> shanks =
        assembly.fasteners().stream()
            .collect(
                Collectors.groupingBy(
                    fastener -> fastener.into().id(),
                    TreeMap::new,
                    Collectors.mapping(Rod::of, Collectors.toList())));
    Map<String, List<Rod>> holes = new TreeMap<>();
    for (Joint joint : assembly.joints()) {
      List<Rod> inRail = holes.computeIfAbsent(joint.rail().id(), id -> new ArrayList<>());
      joint.pins().forEach(pin -> inRail.add(Rod.of(joint.rail().bore(pin.railHole()))));
    }
    return new Inside(shanks, holes);
  }

  /** Each shank at each dowel hole of the piece it is driven into. */
  Stream<Pair> shanksAtDowels() {
    return shanks.entrySet().stream()
        .flatMap(
            entry ->
                dowelHoles.getOrDefault(entry.getKey(), List.of()).stream()
                    .flatMap(hole -> entry.getValue().stream().map(rod -> new Pair(rod, hole))));
  }

  /** Shanks in one piece that are near one another. */
  Stream<Pair> shanksAtShanks() {
    return shanks.values().stream().flatMap(rods -> near(rods).stream());
  }

  /** All pairs that have less wood between them along y than {@link Rod#WALL}. */
  static List<Pair> near(List<Rod> rods) {
    List<Rod> sorted = new ArrayList<>(rods);
    sorted.sort(Comparator.comparingDouble(rod -> rod.lowest(Axis.Y)));
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      double far = sorted.get(i).highest(Axis.Y) + Rod.WALL;
      for (int j = i + 1; j < sorted.size() && sorted.get(j).lowest(Axis.Y) < far; j++) {
        pairs.add(new Pair(sorted.get(i), sorted.get(j)));
      }
    }
    return pairs;
  }

  /** A piece of that part, all of which are drilled alike; empty where none is built in. */
  static Optional<Piece> anyOf(Part part, Assembly assembly) {
    return assembly.pieces().stream().filter(piece -> piece.part() == part).findFirst();
  }

  static String plural(Fastener.Kind kind) {
    return kind.word() + "s";
  }

  /** Two of them. */
  record Pair(Rod first, Rod second) {

    double wood() {
      return first.woodTo(second);
    }

    static Walls walls(List<Pair> pairs) {
      return Walls.of(pairs.stream().mapToDouble(Pair::wood));
    }
  }
}
