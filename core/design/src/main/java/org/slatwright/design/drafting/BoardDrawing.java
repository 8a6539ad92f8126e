package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;

/** One layout of a timber: which boards are cut so, the board, and the sum that proves it. */
final class BoardDrawing {

  private static final double MARKS = 3.5;
  private static final double LETTERING = 2.5;
  private static final double ABOVE_BAR = 1;

  private final BoardBar bar;
  private final LabelRow labels;
  private final List<String> caption;
  private final List<String> sum;

  /**
   * A board in a room.
   *
   * @param room width in mm
   */
  BoardDrawing(BoardBar bar, double room) {
    this.bar = bar;
    this.labels = new LabelRow(bar.labelsBelow(), room);
    this.caption = Paragraph.wrap(caption(), MARKS, room);
    this.sum = isRipped() ? List.of() : Paragraph.wrap(sum(), LETTERING, room);
  }

  double height() {
    double sumHeight = sum.isEmpty() ? 0 : 1 + Paragraph.heightOf(sum.size(), LETTERING);
    return captionHeight() + bar.height() + labels.height() + sumHeight;
  }

  /** With its upper left corner there. */
  Figure figure(double left, double top) {
    double bottom = top - captionHeight() - bar.height();
    List<Figure> figures = new ArrayList<>(Paragraph.draw(caption, left, top, MARKS));
    figures.addAll(bar.figures(left, bottom));
    figures.addAll(labels.figures(left, bottom));
    if (!sum.isEmpty()) {
      figures.addAll(Paragraph.draw(sum, left, bottom - labels.height() - 1, LETTERING));
    }
    String mark = bar.board().marks().get(0);
    return new Figure.Cluster("board-" + mark, "board " + Marks.of(bar.board().marks()), figures);
  }

  private double captionHeight() {
    return Paragraph.heightOf(caption.size(), MARKS) + ABOVE_BAR;
  }

  private String caption() {
    CutBoard board = bar.board();
    List<String> said = new ArrayList<>();
    int count = board.marks().size();
    said.add(count == 1 ? size() : count + " alike, each " + size());
    said.add(board.source().word());
    board.price().ifPresent(price -> said.add(price.toPlainString() + (count == 1 ? "" : " each")));
    return Marks.of(board.marks()) + ": " + String.join(", ", said);
  }

  /** Reclaimed boards differ from each other in all their sizes. */
  private String size() {
    CutBoard board = bar.board();
    return board.source() == CutBoard.Source.RECLAIMED
        ? bar.lengths().number(board.length())
            + " × "
            + bar.lengths().section(board.width(), board.thickness())
        : bar.lengths().withUnit(board.length());
  }

  /** Strips lie beside each other and have no one sum. */
  private boolean isRipped() {
    Length width = bar.board().width();
    return Stream.concat(
            bar.board().cuts().stream().map(Cut::width),
            bar.board().offcuts().stream().map(Offcut::width))
        .anyMatch(each -> !each.equals(width));
  }

  private String sum() {
    CutBoard board = bar.board();
    List<String> terms = new ArrayList<>();
    terms.addAll(gaps(" trim"));
    terms.addAll(gaps(" avoided"));
    terms.addAll(terms(board.cuts().stream().map(Cut::length).toList(), ""));
    terms.addAll(gaps(" sawn"));
    terms.addAll(terms(board.offcuts().stream().map(Offcut::length).toList(), " offcut"));
    return String.join(" + ", terms) + " = " + bar.lengths().withUnit(board.length());
  }

  private List<String> gaps(String word) {
    return terms(
        bar.gaps().spans().stream()
            .filter(gap -> word(gap).equals(word))
            .map(gap -> new Length(gap.to() - gap.from()))
            .toList(),
        word);
  }

  /** What becomes of a stretch that neither a piece nor an offcut takes. */
  private String word(Spans.Span gap) {
    CutBoard board = bar.board();
    boolean avoided =
        board.avoid().stream()
            .anyMatch(
                stretch ->
                    stretch.from().nanometres() < gap.to()
                        && gap.from() < stretch.to().nanometres());
    boolean atEnd = gap.from() == 0 || gap.to() == board.length().nanometres();
    return avoided ? " avoided" : atEnd ? " trim" : " sawn";
  }

  private List<String> terms(List<Length> parts, String word) {
    Map<Length, Long> counts =
        parts.stream()
            .collect(
                Collectors.groupingBy(part -> part, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .map(
            term ->
                (term.getValue() == 1 ? "" : term.getValue() + " × ")
                    + bar.lengths().number(term.getKey())
                    + word)
        .toList();
  }
}
