package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;

/** Shares out running texts over as many sheets as they take. */
final class TextPages {

  private final double height;
  private final double gap;
  private final List<List<RunningText<?>>> pages = new ArrayList<>();
  private double left;

  private TextPages(double height, double gap) {
    this.height = height;
    this.gap = gap;
  }

  /**
   * What stands on each sheet, from the top down.
   *
   * @param height of the room on a sheet, mm
   * @param gap between two texts, mm
   */
  static List<List<RunningText<?>>> of(List<RunningText<?>> texts, double height, double gap) {
    TextPages shared = new TextPages(height, gap);
    texts.forEach(shared::add);
    return shared.pages;
  }

  private void add(RunningText<?> text) {
    RunningText<?> rest = text;
    while (!rest.isEmpty()) {
      int count = rest.fitting(left);
      if (count == 0) {
        turnPage();
        count = Math.max(1, rest.fitting(left));
      }
      RunningText<?> here = rest.first(count);
      pages.get(pages.size() - 1).add(here);
      left -= here.block().height() + gap;
      rest = rest.after(count);
    }
  }

  private void turnPage() {
    pages.add(new ArrayList<>());
    left = height;
  }
}
