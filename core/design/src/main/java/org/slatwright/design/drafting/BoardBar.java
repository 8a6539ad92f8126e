package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.design.drafting.LabelRow.Label;
import org.slatwright.design.drafting.Spans.Span;

/**
 * A board as it is cut, lying with the end that is cut first at the left and the edge that lies
 * against the fence below. Saw cuts are black and as wide as the kerf.
 *
 * @param along mm on paper for one of its length
 * @param across mm on paper for one of its width
 */
record BoardBar(CutBoard board, Length kerf, double along, double across, LengthFormat lengths) {

  private static final double LETTERING = 2.5;
  private static final double AIR = 1;
  private static final double ABOVE_AND_BELOW = 0.6;

  double height() {
    return board.width().inMm() * across;
  }

  /** With its lower left corner there. */
  List<Figure> figures(double left, double bottom) {
    PaperBox whole = box(left, bottom, Length.ZERO, board.length(), Length.ZERO, board.width());
    List<Figure> figures = new ArrayList<>();
    for (Span gap : gaps().spans()) {
      if (gap.to() - gap.from() > kerf.nanometres()) {
        figures.addAll(Shading.TRIM.figures(stretch(left, bottom, gap)));
      }
    }
    for (Cut cut : board.cuts()) {
      PaperBox sawn = box(left, bottom, cut).grown(kerf.inMm() * along, kerf.inMm() * across);
      figures.add(sawn.within(whole).fill(Figure.Shade.INK));
    }
    for (Offcut offcut : board.offcuts()) {
      figures.addAll(Shading.OFFCUT.figures(box(left, bottom, offcut)));
    }
    for (Span avoided : avoided().spans()) {
      figures.addAll(Shading.AVOID.figures(stretch(left, bottom, avoided)));
    }
    board.cuts().forEach(cut -> figures.addAll(piece(cut, box(left, bottom, cut))));
    for (Offcut offcut : board.offcuts()) {
      inside(offcut).ifPresent(text -> figures.addAll(onHatch(text, clear(left, bottom, offcut))));
    }
    figures.add(whole.outline(LineKind.VISIBLE));
    return figures;
  }

  /** Of what has no room for its lettering inside, from the left. */
  List<Label> labelsBelow() {
    List<Label> labels = new ArrayList<>();
    for (List<Cut> run : runs()) {
      Cut first = run.get(0);
      if (!fits(text(first), box(0, 0, first))) {
        labels.add(label(run));
      }
    }
    for (Offcut offcut : board.offcuts()) {
      if (offcut.keep() && inside(offcut).isEmpty()) {
        PaperBox box = clear(0, 0, offcut);
        labels.add(new Label(box.left(), box.right(), box.middleY(), texts(offcut).get(0)));
      }
    }
    labels.sort(Comparator.comparingDouble(Label::middle));
    return labels;
  }

  private Label label(List<Cut> run) {
    PaperBox first = box(0, 0, run.get(0));
    PaperBox last = box(0, 0, run.get(run.size() - 1));
    String count = run.size() == 1 ? "" : run.size() + " × ";
    boolean bracket = run.size() > 1 && run.get(0).across().isZero();
    return new Label(
        first.left(), last.right(), bracket ? 0 : first.middleY(), count + text(run.get(0)));
  }

  /** Pieces that are alike and lie one after the other. */
  private List<List<Cut>> runs() {
    List<List<Cut>> runs = new ArrayList<>();
    List<Cut> sorted =
        board.cuts().stream()
            .sorted(Comparator.comparing(Cut::across).thenComparing(Cut::from))
            .toList();
    for (Cut cut : sorted) {
      Cut before = runs.isEmpty() ? null : runs.get(runs.size() - 1).get(0);
      if (before == null || !alike(before, cut)) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(cut);
    }
    return runs;
  }

  private static boolean alike(Cut one, Cut other) {
    return one.mark().equals(other.mark())
        && one.length().equals(other.length())
        && one.across().equals(other.across())
        && one.width().equals(other.width());
  }

  private List<Figure> piece(Cut cut, PaperBox box) {
    List<Figure> figures = new ArrayList<>();
    if (cut.spare()) {
      figures.addAll(Shading.SPARE.figures(box));
    } else {
      figures.add(box.fill(Figure.Shade.PAPER));
      figures.add(box.outline(LineKind.THIN));
    }
    if (fits(text(cut), box)) {
      figures.add(centred(text(cut), box));
    }
    return figures;
  }

  private String text(Cut cut) {
    return cut.mark() + " " + lengths.number(cut.length());
  }

  private Optional<String> inside(Offcut offcut) {
    PaperBox box = clear(0, 0, offcut);
    return texts(offcut).stream().filter(text -> fits(text, box)).findFirst();
  }

  /** The fullest first. */
  private List<String> texts(Offcut offcut) {
    String length = lengths.number(offcut.length());
    if (!offcut.keep()) {
      return List.of(length);
    }
    String keep = "keep " + length;
    return offcut.gives().isEmpty() ? List.of(keep) : List.of(keep + ": " + offcut.gives());
  }

  private static List<Figure> onHatch(String text, PaperBox box) {
    double half = Lettering.width(text, LETTERING) / 2 + AIR / 2;
    double high = LETTERING / 2 + ABOVE_AND_BELOW;
    PaperBox patch =
        new PaperBox(
            box.middleX() - half, box.middleY() - high, box.middleX() + half, box.middleY() + high);
    return List.of(patch.within(box).fill(Figure.Shade.PAPER), centred(text, box));
  }

  private static Figure centred(String text, PaperBox box) {
    return Paragraph.text(
        box.middleX(), box.middleY() - LETTERING / 2, LETTERING, text, Figure.Align.MIDDLE);
  }

  private static boolean fits(String text, PaperBox box) {
    return Lettering.width(text, LETTERING) + 2 * AIR <= box.width()
        && LETTERING + 2 * ABOVE_AND_BELOW <= box.height();
  }

  /** The longest stretch of an offcut that nothing mars. */
  private PaperBox clear(double left, double bottom, Offcut offcut) {
    long from = offcut.from().nanometres();
    long to = from + offcut.length().nanometres();
    Span longest =
        Spans.of(from, to).minus(avoided()).spans().stream()
            .max(Comparator.comparingLong(span -> span.to() - span.from()))
            .orElse(new Span(from, to));
    PaperBox stretch = stretch(left, bottom, longest);
    PaperBox box = box(left, bottom, offcut);
    return new PaperBox(stretch.left(), box.bottom(), stretch.right(), box.top());
  }

  private Spans avoided() {
    return Spans.joined(
            board.avoid().stream()
                .map(zone -> new Span(zone.from().nanometres(), zone.to().nanometres()))
                .toList())
        .within(0, board.length().nanometres());
  }

  /** Stretches along the board of which neither a piece nor an offcut is made. */
  Spans gaps() {
    List<Span> used =
        Stream.concat(
                board.cuts().stream().map(cut -> span(cut.from(), cut.length())),
                board.offcuts().stream().map(offcut -> span(offcut.from(), offcut.length())))
            .toList();
    return Spans.of(0, board.length().nanometres()).minus(Spans.joined(used));
  }

  private static Span span(Length from, Length length) {
    return new Span(from.nanometres(), from.plus(length).nanometres());
  }

  private PaperBox stretch(double left, double bottom, Span span) {
    Length from = new Length(span.from());
    Length length = new Length(span.to() - span.from());
    return box(left, bottom, from, length, Length.ZERO, board.width());
  }

  private PaperBox box(double left, double bottom, Cut cut) {
    return box(left, bottom, cut.from(), cut.length(), cut.across(), cut.width());
  }

  private PaperBox box(double left, double bottom, Offcut offcut) {
    return box(left, bottom, offcut.from(), offcut.length(), offcut.across(), offcut.width());
  }

  private PaperBox box(
      double left, double bottom, Length from, Length length, Length up, Length width) {
    double x = left + from.inMm() * along;
    double y = bottom + up.inMm() * across;
    return new PaperBox(x, y, x + length.inMm() * along, y + width.inMm() * across);
  }
}
