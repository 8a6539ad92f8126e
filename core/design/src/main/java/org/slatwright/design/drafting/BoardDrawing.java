package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.design.drafting.LabelRow.Side;
import org.slatwright.design.drafting.Spans.Span;
import org.slatwright.design.framing.Marks;

/**
 * One layout of a timber: which boards are cut so, the board, and the sum that proves it; of a
 * ripped board, whose strips have no one sum, what its small offcuts measure.
 */
final class BoardDrawing {

  private static final double CAPTION = 3.5;
  private static final double LETTERING = 2.5;
  private static final double ABOVE_BAR = 1;

  private final Losses losses;
  private final LengthFormat lengths;
  private final BoardBar bar;
  private final List<String> caption;
  private final List<String> marks;
  private final LabelRow above;
  private final LabelRow below;
  private final LabelRow between;
  private final List<String> foot;

  /**
   * A board in a room.
   *
   * @param place at nought, nought: how large it is drawn
   * @param room width in mm
   */
  BoardDrawing(Losses losses, BoardPlace place, LengthFormat lengths, double room) {
    this.losses = losses;
    this.lengths = lengths;
    BoardLettering lettering = new BoardLettering(losses, place, lengths);
    this.bar = new BoardBar(losses, place, lettering);
    String all = Marks.of(board().marks());
    boolean oneLine = Lettering.width(all + ": " + caption(), CAPTION) <= room;
    this.caption = Paragraph.wrap(oneLine ? all + ": " + caption() : caption(), CAPTION, room);
    this.marks = oneLine ? List.of() : Paragraph.wrap(all, LETTERING, room);
    this.above = new LabelRow(Side.ABOVE, lettering.labels(Side.ABOVE), room);
    this.below = new LabelRow(Side.BELOW, lettering.labels(Side.BELOW), room);
    this.between = new LabelRow(Side.BETWEEN, lettering.labels(Side.BETWEEN), room);
    String said = isRipped() ? smallOffcuts(lettering) : sum();
    this.foot = said.isEmpty() ? List.of() : Paragraph.wrap(said, LETTERING, room);
  }

  double height() {
    return aboveBar() + bar.height() + below.height() + between.height() + high(foot);
  }

  /** What is to be seen on it. */
  Set<Shading> shadings() {
    return bar.shadings();
  }

  /** With its upper left corner there. */
  Figure figure(double left, double top) {
    List<Figure> figures = new ArrayList<>(Paragraph.draw(caption, left, top, CAPTION));
    double y = top - Paragraph.heightOf(caption.size(), CAPTION);
    figures.addAll(Paragraph.draw(marks, left, y - 1, LETTERING));
    double aboveTop = y - high(marks);
    y = top - aboveBar() - bar.height();
    figures.addAll(bar.figures(left, y));
    figures.addAll(above.figures(left, aboveTop));
    figures.addAll(below.figures(left, y));
    y -= below.height();
    figures.addAll(between.figures(left, y));
    figures.addAll(Paragraph.draw(foot, left, y - between.height() - 1, LETTERING));
    return new Figure.Cluster(
        "board-" + board().marks().get(0), "board " + Marks.of(board().marks()), figures);
  }

  private double aboveBar() {
    return Paragraph.heightOf(caption.size(), CAPTION) + high(marks) + above.height() + ABOVE_BAR;
  }

  /** Lines with a little air above them. */
  private static double high(List<String> lines) {
    return lines.isEmpty() ? 0 : 1 + Paragraph.heightOf(lines.size(), LETTERING);
  }

  private CutBoard board() {
    return losses.board();
  }

  private String caption() {
    List<String> said = new ArrayList<>();
    int count = board().marks().size();
    said.add(count == 1 ? size() : count + " alike, each " + size());
    said.add(board().source().word());
    board()
        .price()
        .ifPresent(price -> said.add(price.toPlainString() + (count == 1 ? "" : " each")));
    return String.join(", ", said);
  }

  /** Reclaimed boards differ from each other in all their sizes. */
  private String size() {
    return board().source() == CutBoard.Source.RECLAIMED
        ? lengths.size(board().length(), board().width(), board().thickness())
        : lengths.withUnit(board().length());
  }

  private boolean isRipped() {
    return Stream.concat(
            board().cuts().stream().map(Cut::width), board().offcuts().stream().map(Offcut::width))
        .anyMatch(each -> !each.equals(board().width()));
  }

  private static String smallOffcuts(BoardLettering lettering) {
    List<String> small = lettering.smallOffcuts();
    return small.isEmpty() ? "" : "Small offcuts, from the left: " + String.join(", ", small);
  }

  private String sum() {
    List<String> terms = new ArrayList<>();
    terms.addAll(terms(losses.trimmed(), Shading.TRIM));
    terms.addAll(terms(losses.avoided(), Shading.AVOID));
    terms.addAll(terms(board().cuts().stream().map(Cut::length), ""));
    terms.addAll(terms(losses.sawn(), Shading.SAWN));
    terms.addAll(
        terms(board().offcuts().stream().map(Offcut::length), " " + Shading.OFFCUT.word()));
    return String.join(" + ", terms) + " = " + lengths.withUnit(board().length());
  }

  private List<String> terms(Spans lost, Shading shading) {
    return terms(lost.spans().stream().map(Span::length), " " + shading.word());
  }

  private List<String> terms(Stream<Length> parts, String word) {
    Map<Length, Long> counts =
        parts.collect(
            Collectors.groupingBy(part -> part, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .map(
            term ->
                (term.getValue() == 1 ? "" : term.getValue() + " × ")
                    + lengths.number(term.getKey())
                    + word)
        .toList();
  }
}
