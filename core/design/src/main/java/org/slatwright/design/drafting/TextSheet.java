package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.design.sizing.Rack;

/** A sheet of texts and tables below each other. */
final class TextSheet implements SheetDrawing {

  private static final double PAD = 4;
  private static final double GAP = 4;

  private final Rack rack;
  private final String name;
  private final String title;
  private final SheetFrame frame;
  private final List<RunningText<?>> texts;

  private TextSheet(
      Rack rack, String name, String title, SheetFrame frame, List<RunningText<?>> texts) {
    this.rack = rack;
    this.name = name;
    this.title = title;
    this.frame = frame;
    this.texts = texts;
  }

  /**
   * As many sheets as they take; none where there is no text.
   *
   * @param name of the sheet, after its number
   * @param texts for the width of the sheet's room, mm
   */
  static List<SheetDrawing> of(
      Rack rack, String name, String title, DoubleFunction<List<RunningText<?>>> texts) {
    SheetFrame frame = SheetFrame.usual(rack.shop().paper());
    double height = frame.height() - TitleBlock.HEIGHT - 2 * PAD;
    return TextPages.of(texts.apply(frame.width() - 2 * PAD), height, GAP).stream()
        .<SheetDrawing>map(page -> new TextSheet(rack, name, title, frame, page))
        .toList();
  }

  @Override
  public Sheet sheet(int number, int count) {
    List<View> views = new ArrayList<>();
    views.add(frame.view());
    views.addAll(
        TextPages.views(texts, frame.left() + PAD, frame.top() - PAD, GAP, Optional.empty()));
    views.add(TitleBlock.ofText(rack, title, number, count).view(frame));
    String numbered = String.format(Locale.ROOT, "drawings/%02d-%s", number, name);
    return new Sheet(numbered, title, rack.shop().paper(), frame.landscape(), views);
  }
}
