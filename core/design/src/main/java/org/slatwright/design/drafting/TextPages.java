package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;

/**
 * Shares out running texts over as many sheets as they take.
 *
 * @param <T> what all their items are
 */
final class TextPages<T> {

  private final double height;
  private final double gap;
  private final List<List<RunningText<? extends T>>> pages = new ArrayList<>();
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
  static <T> List<List<RunningText<? extends T>>> of(
      List<RunningText<? extends T>> texts, double height, double gap) {
    TextPages<T> shared = new TextPages<>(height, gap);
    texts.forEach(shared::add);
    return shared.pages;
  }

  /** One page drawn, each text below the one before, from its upper left corner down. */
  static List<View> views(
      List<? extends RunningText<?>> page,
      double left,
      double top,
      double gap,
      Optional<Scale> scale) {
    List<View> views = new ArrayList<>();
    double y = top;
    for (RunningText<?> text : page) {
      TextBlock block = text.block();
      views.add(new View(text.id(), text.heading(), scale, block.figures(left, y)));
      y -= block.height() + gap;
    }
    return views;
  }

  private void add(RunningText<? extends T> text) {
    RunningText<? extends T> rest = text;
    while (!rest.isEmpty()) {
      int count = rest.fitting(left);
      if (count == 0) {
        turnPage();
        count = Math.max(1, rest.fitting(left));
      }
      RunningText<? extends T> here = rest.first(count);
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
