package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.design.drafting.LabelRow.Label;
import org.slatwright.design.drafting.LabelRow.Side;
import org.slatwright.design.drafting.Spans.Span;

/**
 * What is written on the parts of a board, and beside it of those that have no room for it: below
 * or above, wherever a leader crosses no other part.
 *
 * @param place at nought, nought
 */
record BoardLettering(Losses losses, BoardPlace place, LengthFormat lengths) {

  static final double HEIGHT = 2.5;

  private static final double AIR = 1;
  private static final double ABOVE_AND_BELOW = 0.6;

  String text(Cut cut) {
    return cut.mark() + " " + lengths.number(cut.length());
  }

  Optional<String> inside(Cut cut) {
    return Optional.of(text(cut)).filter(text -> fits(text, place.box(cut)));
  }

  Optional<String> inside(Offcut offcut) {
    return Optional.of(text(offcut)).filter(text -> fits(text, clear(offcut, place)));
  }

  private String text(Offcut offcut) {
    String length = lengths.number(offcut.length());
    if (!offcut.keep()) {
      return length;
    }
    return "keep " + length + (offcut.gives().isEmpty() ? "" : ": " + offcut.gives());
  }

  private static boolean fits(String text, PaperBox box) {
    return Lettering.width(text, HEIGHT) + 2 * AIR <= box.width()
        && HEIGHT + 2 * ABOVE_AND_BELOW <= box.height();
  }

  /** The room that a text in the middle of a box takes. */
  static PaperBox patch(String text, PaperBox box) {
    double half = Lettering.width(text, HEIGHT) / 2 + AIR / 2;
    double high = HEIGHT / 2 + ABOVE_AND_BELOW;
    double x = box.middleX();
    double y = box.middleY();
    return new PaperBox(x - half, y - high, x + half, y + high);
  }

  /** The longest stretch of an offcut that nothing mars. */
  PaperBox clear(Offcut offcut, BoardPlace here) {
    Span all = Part.of(offcut).span();
    Span longest =
        Spans.of(all.from(), all.to()).minus(losses.avoided()).spans().stream()
            .max(Comparator.comparingLong(span -> span.to() - span.from()))
            .orElse(all);
    PaperBox stretch = here.stretch(longest, offcut.width());
    PaperBox box = here.box(offcut);
    return new PaperBox(stretch.left(), box.bottom(), stretch.right(), box.top());
  }

  /** Of pieces, and offcuts to keep, that have no room for their lettering, from the left. */
  List<Label> labels(Side side) {
    Stream<Label> pieces =
        runs().stream()
            .filter(run -> inside(run.get(0)).isEmpty())
            .filter(run -> side(Part.of(run)) == side)
            .map(run -> label(run, side));
    Stream<Label> offcuts =
        losses.board().offcuts().stream()
            .filter(offcut -> offcut.keep() && inside(offcut).isEmpty())
            .filter(offcut -> side(Part.of(offcut)) == side)
            .map(offcut -> label(offcut, side));
    return Stream.concat(pieces, offcuts)
        .sorted(Comparator.comparingDouble(Label::middle))
        .toList();
  }

  /** How large the offcuts are that are too small to be lettered, and too small to keep. */
  List<String> smallOffcuts() {
    Map<String, Long> counts =
        losses.board().offcuts().stream()
            .filter(offcut -> !offcut.keep() && inside(offcut).isEmpty())
            .sorted(Comparator.comparing(Offcut::from).thenComparing(Offcut::across))
            .map(offcut -> lengths.section(offcut.length(), offcut.width()))
            .collect(
                Collectors.groupingBy(size -> size, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .map(size -> (size.getValue() == 1 ? "" : size.getValue() + " of ") + size.getKey())
        .toList();
  }

  private Label label(List<Cut> run, Side side) {
    PaperBox first = place.box(run.get(0));
    PaperBox last = place.box(run.get(run.size() - 1));
    if (run.size() == 1 || !isAtEdge(run.get(0), side)) {
      Cut middle = run.get(run.size() / 2);
      PaperBox box = place.box(middle);
      return new Label(box.left(), box.right(), depth(box, side), count(run) + text(middle));
    }
    return new Label(first.left(), last.right(), 0, count(run) + text(run.get(0)));
  }

  private static String count(List<Cut> run) {
    return run.size() == 1 ? "" : run.size() + " × ";
  }

  private Label label(Offcut offcut, Side side) {
    PaperBox box = clear(offcut, place);
    return new Label(box.left(), box.right(), depth(box, side), text(offcut));
  }

  /** How far into the board a leader goes. */
  private double depth(PaperBox box, Side side) {
    double high = losses.board().width().inMm() * place.across();
    return side == Side.ABOVE ? high - box.middleY() : box.middleY();
  }

  private boolean isAtEdge(Cut cut, Side side) {
    return side == Side.ABOVE
        ? cut.across().plus(cut.width()).equals(losses.board().width())
        : cut.across().isZero();
  }

  /** From where a leader crosses neither a piece nor an offcut to keep. */
  private Side side(Part part) {
    List<Part> beside =
        Stream.concat(
                losses.board().cuts().stream().map(Part::of),
                losses.board().offcuts().stream().filter(Offcut::keep).map(Part::of))
            .filter(other -> other.isBeside(part))
            .toList();
    if (beside.stream().noneMatch(other -> other.across().isLessThan(part.across()))) {
      return Side.BELOW;
    }
    return beside.stream().noneMatch(other -> other.across().isMoreThan(part.across()))
        ? Side.ABOVE
        : Side.BETWEEN;
  }

  /** Where a part of a board lies. */
  private record Part(Span span, Length across) {

    static Part of(Cut cut) {
      return new Part(Span.of(cut.from(), cut.length()), cut.across());
    }

    static Part of(List<Cut> run) {
      Span last = of(run.get(run.size() - 1)).span;
      return new Part(new Span(of(run.get(0)).span.from(), last.to()), run.get(0).across());
    }

    static Part of(Offcut offcut) {
      return new Part(Span.of(offcut.from(), offcut.length()), offcut.across());
    }

    boolean isBeside(Part other) {
      return span.from() < other.span.to() && other.span.from() < span.to();
    }
  }

  /** Pieces that are alike and lie one after the other. */
  private List<List<Cut>> runs() {
    List<List<Cut>> runs = new ArrayList<>();
    List<Cut> sorted =
        losses.board().cuts().stream()
            .sorted(Comparator.comparing(Cut::across).thenComparing(Cut::from))
            .toList();
    for (Cut cut : sorted) {
      if (runs.isEmpty() || !alike(runs.get(runs.size() - 1).get(0), cut)) {
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
}
