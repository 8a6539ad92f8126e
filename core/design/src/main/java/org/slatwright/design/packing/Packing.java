package org.slatwright.design.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;

/**
 * Sheets of one size, and how close shapes may lie on them. The same shapes always lie the same.
 *
 * @param widthMm of a sheet
 * @param heightMm of a sheet
 * @param spacingMm least distance between two shapes; to the edge of the sheet there is none
 */
public record Packing(double widthMm, double heightMm, double spacingMm) {

  /** What to place first: no order is best for all, each is for some. */
  private static final List<Comparator<Item>> ORDERS =
      List.of(
          Comparator.comparingDouble(item -> -item.flat().area()),
          Comparator.comparingDouble(item -> -item.longest()),
          Comparator.comparingDouble(item -> -item.shortest()));

  /**
   * A place for each shape, in the order given, or empty when one is larger than a sheet however it
   * is turned. First fit, largest first, as low as may be (Baker, Coffman and Rivest 1980), in
   * another order while more sheets are taken than the area needs.
   *
   * @param shapes in mm, each anywhere
   */
  public Optional<List<Spot>> place(List<Polygon> shapes) {
    List<Item> items =
        IntStream.range(0, shapes.size()).mapToObj(i -> Item.of(i, shapes.get(i))).toList();
    if (!items.stream().allMatch(item -> item.turns().stream().anyMatch(this::holds))) {
      return Optional.empty();
    }
    Filled best = null;
    for (Comparator<Item> order : ORDERS) {
      if (best == null || best.sheets() > leastSheets(items)) {
        Filled next = filled(items.stream().sorted(order).toList());
        best = best == null || next.sheets() < best.sheets() ? next : best;
      }
    }
    return Optional.of(best.spots());
  }

  /** Fewer do not hold the area. */
  private double leastSheets(List<Item> items) {
    double area = items.stream().mapToDouble(item -> item.flat().area()).sum();
    return Math.ceil(area / (widthMm * heightMm) - 1e-9);
  }

  /** Whether an empty sheet takes it. */
  private boolean holds(Cover cover) {
    return new Sheet(this).placeFor(List.of(cover)).isPresent();
  }

  private Filled filled(List<Item> inOrder) {
    List<Sheet> sheets = new ArrayList<>();
    Spot[] spots = new Spot[inOrder.size()];
    for (Item item : inOrder) {
      spots[item.index()] = firstSpot(item.turns(), sheets);
    }
    return new Filled(List.of(spots), sheets.size());
  }

  private Spot firstSpot(List<Cover> turns, List<Sheet> sheets) {
    for (int i = 0; ; i++) {
      if (i == sheets.size()) {
        sheets.add(new Sheet(this));
      }
      Optional<Sheet.Place> found = sheets.get(i).placeFor(turns);
      if (found.isPresent()) {
        Sheet.Place place = found.get();
        sheets.get(i).add(place);
        return new Spot(i, place.x(), place.y(), place.quarterTurns());
      }
    }
  }

  private record Filled(List<Spot> spots, int sheets) {}

  /**
   * A shape to place.
   *
   * @param turns its cover turned by no, one, two and three quarters; a rectangle twice is enough
   */
  private record Item(int index, List<Cover> turns) {

    static Item of(int index, Polygon shape) {
      Cover flat = Cover.of(shape);
      int different = flat.boxes().size() == 1 ? 2 : 4;
      return new Item(index, Stream.iterate(flat, Cover::turned).limit(different).toList());
    }

    Cover flat() {
      return turns.get(0);
    }

    double longest() {
      return Math.max(flat().width(), flat().height());
    }

    double shortest() {
      return Math.min(flat().width(), flat().height());
    }
  }
}
