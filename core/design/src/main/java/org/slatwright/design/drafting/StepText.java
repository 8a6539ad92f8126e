package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/**
 * One step as it stands on paper: its number large, then what is done, with what, how long, and the
 * check that ends it; beside it a picture where there is one.
 *
 * @param like the number of an earlier step that is done in the same way; it is not told again
 * @param width of its room, mm
 */
record StepText(
    Step step,
    Optional<Integer> like,
    Optional<StepPicture> picture,
    LengthFormat lengths,
    double width) {

  private static final double TITLE = 3.5;
  private static final double LETTERING = 2.5;
  private static final double NUMBER_WIDTH = 10;
  private static final double PICTURE = 42;
  private static final double GAP = 4;
  private static final double BETWEEN = 1.2;
  private static final double TICK_BOX = 4;

  double height() {
    double text = paragraphs().stream().mapToDouble(this::heightOf).sum() + titleHeight() - BETWEEN;
    return picture.isPresent() ? Math.max(text, PICTURE) : text;
  }

  List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.addAll(Paragraph.draw(List.of(Integer.toString(step.number())), left, top, TITLE));
    figures.add(tickBox(left, top - titleHeight()));
    figures.addAll(Paragraph.draw(title(), left + NUMBER_WIDTH, top, TITLE));
    double y = top - titleHeight();
    for (String paragraph : paragraphs()) {
      figures.addAll(Paragraph.draw(lines(paragraph), left + NUMBER_WIDTH, y, LETTERING));
      y -= heightOf(paragraph);
    }
    picture.ifPresent(
        shown -> figures.add(new Figure.Cluster(id(), label(), shown.figures(room(left, top)))));
    return figures;
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

  private String id() {
    return "picture-" + step.id();
  }

  private String label() {
    return "the rack after step " + step.number();
  }

  private PaperBox room(double left, double top) {
    return new PaperBox(left + width - PICTURE, top - PICTURE, left + width, top);
  }

  private double textWidth() {
    return width - NUMBER_WIDTH - (picture.isPresent() ? PICTURE + GAP : 0);
  }

  private List<String> title() {
    return Paragraph.wrap(step.title(), TITLE, textWidth());
  }

  private double titleHeight() {
    return Paragraph.heightOf(title().size(), TITLE) + BETWEEN;
  }

  private List<String> lines(String paragraph) {
    return Paragraph.wrap(paragraph, LETTERING, textWidth());
  }

  private double heightOf(String paragraph) {
    return Paragraph.heightOf(lines(paragraph).size(), LETTERING) + BETWEEN;
  }

  /** What there is to say, one after the other. */
  private List<String> paragraphs() {
    return like.map(earlier -> List.of(times(), "As step " + earlier + ", with its check."))
        .orElseGet(this::whole);
  }

  private List<String> whole() {
    List<String> said = new ArrayList<>();
    said.add(times());
    step.doing().forEach(sentence -> said.add(in(sentence)));
    with().ifPresent(said::add);
    said.add("Check: " + in(step.check()));
    if (!step.caution().isEmpty()) {
      said.add("Caution: " + step.caution());
    }
    return said;
  }

  private String times() {
    String after =
        step.after().isEmpty()
            ? ""
            : ", after "
                + step.after().stream().map(String::valueOf).collect(Collectors.joining(", "));
    String wait =
        step.then().map(then -> "; then " + then.time().words() + ": " + then.why()).orElse("");
    return "About " + step.work().words() + after + wait + ".";
  }

  /** Parts, tools and supplies. */
  private Optional<String> with() {
    String with =
        Stream.of(
                step.parts().stream().map(parts -> parts.count() + " × " + parts.mark()),
                step.supplies().stream().map(this::in),
                step.tools().stream())
            .map(each -> each.collect(Collectors.joining(", ")))
            .filter(each -> !each.isEmpty())
            .collect(Collectors.joining("; "));
    return with.isEmpty() ? Optional.empty() : Optional.of("With: " + with + ".");
  }

  private String in(Wording sentence) {
    return sentence.in(lengths);
  }
}
