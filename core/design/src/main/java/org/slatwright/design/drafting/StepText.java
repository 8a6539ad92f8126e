package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.plan.Step;

/**
 * One step as it stands on paper: its number, title and words, a box to tick, and beside them a
 * picture where there is one.
 */
final class StepText {

  private static final double TITLE = 3.5;
  private static final double LETTERING = 2.5;
  private static final double NUMBER_WIDTH = 10;
  private static final double PICTURE = 42;
  private static final double GAP = 4;
  private static final double BETWEEN = 1.2;
  private static final double TICK_BOX = 4;

  private final Step step;
  private final Optional<StepPicture> picture;
  private final double width;
  private final List<String> title;
  private final List<List<String>> paragraphs;

  /** In a room of {@code width} mm. */
  StepText(StepWords words, Optional<StepPicture> picture, double width) {
    this.step = words.step();
    this.picture = picture;
    this.width = width;
    double textWidth = width - NUMBER_WIDTH - (picture.isPresent() ? PICTURE + GAP : 0);
    this.title = Paragraph.wrap(step.title(), TITLE, textWidth);
    this.paragraphs =
        words.paragraphs().stream()
            .map(text -> Paragraph.wrap(text, LETTERING, textWidth))
            .toList();
  }

  /** In mm on paper. */
  double width() {
    return width;
  }

  /** In mm on paper. */
  double height() {
    double text =
        titleHeight() + paragraphs.stream().mapToDouble(StepText::heightOf).sum() - BETWEEN;
    return picture.isPresent() ? Math.max(text, PICTURE) : text;
  }

  /** Drawn with its upper left corner there. */
  List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.addAll(Paragraph.draw(List.of(Integer.toString(step.number())), left, top, TITLE));
    figures.add(tickBox(left, top - titleHeight()));
    figures.addAll(Paragraph.draw(title, left + NUMBER_WIDTH, top, TITLE));
    double y = top - titleHeight();
    for (List<String> lines : paragraphs) {
      figures.addAll(Paragraph.draw(lines, left + NUMBER_WIDTH, y, LETTERING));
      y -= heightOf(lines);
    }
    PaperBox room = new PaperBox(left + width - PICTURE, top - PICTURE, left + width, top);
    picture.ifPresent(shown -> figures.add(cluster(shown.figures(room))));
    return figures;
  }

  private Figure cluster(List<Figure> drawn) {
    return new Figure.Cluster(
        "picture-" + step.id(), "the rack after step " + step.number(), drawn);
  }

  /** To tick when the check is true. */
  private static Figure tickBox(double left, double top) {
    List<PaperPoint> corners =
        List.of(
            new PaperPoint(left, top),
            new PaperPoint(left + TICK_BOX, top),
            new PaperPoint(left + TICK_BOX, top - TICK_BOX),
            new PaperPoint(left, top - TICK_BOX));
    return new Figure.Polyline(corners, true, LineKind.THIN);
  }

  private double titleHeight() {
    return Paragraph.heightOf(title.size(), TITLE) + BETWEEN;
  }

  private static double heightOf(List<String> lines) {
    return Paragraph.heightOf(lines.size(), LETTERING) + BETWEEN;
  }
}
