package org.slatwright.design.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** One sheet while it fills. A shape lies as low as it can, then as far to the left. */
final class Sheet {

  private static final double NM_PER_MM = 1e6;

  /** Rounding of doubles, far below a nanometre. */
  private static final double ROUNDING = 1e-8;

  private static final double ROUNDING_MM2 = 1e-6;

  private final Packing packing;
  private final List<Box> taken = new ArrayList<>();
  private double used;

  Sheet(Packing packing) {
    this.packing = packing;
  }

  /** Where a cover would lie, turned as it is. */
  record Place(Cover cover, int quarterTurns, double x, double y) {

    double top() {
      return y + cover.height();
    }
  }

  /** The place whose top is lowest, of those for every quarter turn. */
  Optional<Place> placeFor(List<Cover> turns) {
    Optional<Place> best = Optional.empty();
    double height = packing.heightMm() + 2 * ROUNDING;
    for (int turn = 0; turn < turns.size() && turns.get(turn).area() <= unused(); turn++) {
      Optional<Place> place = place(turns.get(turn), turn, height);
      if (place.isPresent()) {
        best = place;
        height = place.get().top() - ROUNDING;
      }
    }
    return best;
  }

  void add(Place place) {
    place.cover().boxes().forEach(box -> taken.add(box.moved(place.x(), place.y())));
    used += place.cover().area();
  }

  private double unused() {
    return packing.widthMm() * packing.heightMm() - used + ROUNDING_MM2;
  }

  /**
   * The lowest place whose top lies below {@code height}. Whatever can move left or down no more
   * touches, to the spacing, something or an edge.
   */
  private Optional<Place> place(Cover cover, int turn, double height) {
    double tooHigh = height - cover.height();
    Place best = null;
    for (double x : lefts(cover)) {
      double y = lowest(cover, x, tooHigh);
      if (y < tooHigh) {
        best = new Place(cover, turn, x, y);
        tooHigh = y - ROUNDING;
      }
    }
    return Optional.ofNullable(best);
  }

  /** From left to right, each once. */
  private double[] lefts(Cover cover) {
    double mostX = packing.widthMm() - cover.width() + ROUNDING;
    return DoubleStream.concat(
            DoubleStream.of(0), taken.stream().flatMapToDouble(there -> rightOf(there, cover)))
        .filter(x -> x >= 0 && x <= mostX)
        .sorted()
        .distinct()
        .toArray();
  }

  private DoubleStream rightOf(Box there, Cover cover) {
    return cover.boxes().stream()
        .mapToDouble(box -> whole(there.maxX() + packing.spacingMm() - box.minX()));
  }

  /** The lowest height that is free at that x; or any, from {@code tooHigh} on. */
  private double lowest(Cover cover, double x, double tooHigh) {
    double free = 0;
    double tried;
    do {
      tried = free;
      for (int i = 0; i < taken.size() && free < tooHigh; i++) {
        free = above(taken.get(i), cover, x, free);
      }
    } while (free > tried && free < tooHigh);
    return free;
  }

  /** Raises a cover at {@code x} from {@code y} until it clears that box. */
  private double above(Box there, Cover cover, double x, double y) {
    double spacing = packing.spacingMm() - ROUNDING;
    if (there.maxX() + spacing <= x || x + cover.width() + spacing <= there.minX()) {
      return y;
    }
    double free = y;
    for (Box box : cover.boxes()) {
      boolean beside =
          there.maxX() + spacing <= x + box.minX() || x + box.maxX() + spacing <= there.minX();
      if (!beside
          && free + box.minY() < there.maxY() + spacing
          && there.minY() < free + box.maxY() + spacing) {
        free = whole(there.maxY() + packing.spacingMm() - box.minY());
      }
    }
    return free;
  }

  /** The next whole nanometre, so that a length can hold it. */
  private static double whole(double mm) {
    return Math.ceil(mm * NM_PER_MM - 0.01) / NM_PER_MM;
  }
}
