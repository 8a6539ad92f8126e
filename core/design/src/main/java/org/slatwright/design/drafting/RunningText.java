package org.slatwright.design.drafting;

import java.util.List;
import java.util.function.BiFunction;

/**
 * A run of items under one heading that may go on from sheet to sheet.
 *
 * @param id of its views
 * @param items in order
 * @param setter sets a heading and some of the items
 */
record RunningText<T>(
    String id, String heading, List<T> items, BiFunction<String, List<T>, TextBlock> setter) {

  private static final String CONTINUED = " (continued)";

  RunningText {
    items = List.copyOf(items);
  }

  boolean isEmpty() {
    return items.isEmpty();
  }

  TextBlock block() {
    return setter.apply(heading, items);
  }

  /**
   * How many of its items have room within {@code height} mm, from the first on: twice as many are
   * tried until they are too many, then halves between, since each try sets them all.
   */
  int fitting(double height) {
    int fit = 0;
    int tooMany = 1;
    while (tooMany <= items.size() && fits(tooMany, height)) {
      fit = tooMany;
      tooMany *= 2;
    }
    tooMany = Math.min(tooMany, items.size() + 1);
    while (tooMany - fit > 1) {
      int half = (fit + tooMany) / 2;
      if (fits(half, height)) {
        fit = half;
      } else {
        tooMany = half;
      }
    }
    return fit;
  }

  private boolean fits(int count, double height) {
    return first(count).block().height() <= height;
  }

  RunningText<T> first(int count) {
    return new RunningText<>(id, heading, items.subList(0, count), setter);
  }

  /** What is left when the first {@code count} are on a sheet. */
  RunningText<T> after(int count) {
    String left = count == 0 || heading.endsWith(CONTINUED) ? heading : heading + CONTINUED;
    return new RunningText<>(id, left, items.subList(count, items.size()), setter);
  }
}
