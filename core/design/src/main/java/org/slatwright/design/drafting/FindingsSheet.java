package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/** What the checks found, and the cautions, in words: a sheet to hang beside the bench. */
final class FindingsSheet implements SheetDrawing {

  static final String NAME = "checks-and-cautions";
  static final String TITLE = "Checks and cautions";

  private static final double PAD = 4;
  private static final double GAP = 4;

  private final Rack rack;
  private final SheetFrame frame;
  private final List<RunningText<?>> texts;

  private FindingsSheet(Rack rack, SheetFrame frame, List<RunningText<?>> texts) {
    this.rack = rack;
    this.frame = frame;
    this.texts = texts;
  }

  /** As many sheets as they take; none where there is nothing to say. */
  static List<SheetDrawing> of(Rack rack, List<Finding> findings) {
    if (findings.isEmpty()) {
      return List.of();
    }
    SheetFrame frame = SheetFrame.usual(rack.paper());
    double height = frame.height() - TitleBlock.HEIGHT - 2 * PAD;
    FindingsText text = new FindingsText(findings, frame.width() - 2 * PAD);
    return TextPages.of(text.texts(), height, GAP).stream()
        .<SheetDrawing>map(page -> new FindingsSheet(rack, frame, page))
        .toList();
  }

  @Override
  public Sheet sheet(int number, int count) {
    List<View> views = new ArrayList<>();
    views.add(frame.view());
    double top = frame.top() - PAD;
    for (RunningText<?> text : texts) {
      TextBlock block = text.block();
      views.add(
          new View(
              text.id(), text.heading(), Optional.empty(), block.figures(frame.left() + PAD, top)));
      top -= block.height() + GAP;
    }
    views.add(TitleBlock.ofText(rack, TITLE, number, count).view(frame));
    String name = String.format(Locale.ROOT, "drawings/%02d-%s", number, NAME);
    return new Sheet(name, TITLE, rack.paper(), frame.landscape(), views);
  }
}
