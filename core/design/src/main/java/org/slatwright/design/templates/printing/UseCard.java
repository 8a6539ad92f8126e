package org.slatwright.design.templates.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;

/** How to use a template, on a card among the tiles. */
final class UseCard implements Piece {

  private static final double WIDTH = 84;
  private static final double PAD = 2.5;
  private static final double TITLE = 2.5;
  private static final double STEP = 2;
  private static final double NUMBER = 4;
  private static final double AIR = 1.5;

  private final Draft draft;
  private final List<List<String>> steps;
  private final List<String> title;

  private UseCard(Draft draft, List<String> steps) {
    this.draft = draft;
    this.title =
        Paragraph.wrap(TileWords.name(draft) + ": " + draft.title(), TITLE, WIDTH - 2 * PAD);
    this.steps =
        steps.stream().map(step -> Paragraph.wrap(step, STEP, WIDTH - 2 * PAD - NUMBER)).toList();
  }

  /** The card of a template, unless there is nothing to say. */
  static Optional<UseCard> of(TiledDraft tiled, LengthFormat lengths) {
    List<String> steps = new ArrayList<>();
    Draft draft = tiled.draft();
    if (tiled.grid().size() > 1) {
      steps.add("Cut the tiles out roughly, but at their dashed lines exactly.");
      steps.add(
          "Lay each over the one before it so that the diamonds with one letter close, and glue"
              + " it.");
      steps.add(
          "The whole measures "
              + lengths.section(draft.width(), draft.height())
              + ": hold a tape against it before use.");
    }
    steps.addAll(draft.use());
    return steps.isEmpty() ? Optional.empty() : Optional.of(new UseCard(draft, steps));
  }

  @Override
  public double width() {
    return WIDTH;
  }

  @Override
  public double height() {
    double all = 2 * PAD + Paragraph.heightOf(title.size(), TITLE);
    for (List<String> step : steps) {
      all += AIR + Paragraph.heightOf(step.size(), STEP);
    }
    return all;
  }

  /** As it lies on the page. */
  View view(Laying laying) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Strokes.box(0, 0, width(), height(), LineKind.THIN));
    double top = height() - PAD;
    figures.addAll(Paragraph.draw(title, PAD, top, TITLE));
    top -= Paragraph.heightOf(title.size(), TITLE);
    for (int i = 0; i < steps.size(); i++) {
      top -= AIR;
      figures.addAll(Paragraph.draw(List.of((i + 1) + "."), PAD, top, STEP));
      figures.addAll(Paragraph.draw(steps.get(i), PAD + NUMBER, top, STEP));
      top -= Paragraph.heightOf(steps.get(i).size(), STEP);
    }
    return new View(
        TileWords.file(draft) + "-use",
        "how to use " + TileWords.name(draft),
        Optional.empty(),
        laying.figures(figures));
  }
}
