package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.design.drafting.Spans.Span;

/**
 * A board as it is cut, lying with the end that is cut first at the left and the edge that lies
 * against the fence below. Saw cuts are black and as wide as the kerf.
 *
 * @param place at nought, nought: how large it is drawn
 */
record BoardBar(Losses losses, BoardPlace place, BoardLettering lettering) {

  private CutBoard board() {
    return losses.board();
  }

  double height() {
    return board().width().inMm() * place.across();
  }

  /** What is to be seen on it. */
  Set<Shading> shadings() {
    Set<Shading> seen = EnumSet.of(Shading.SAWN);
    if (!board().offcuts().isEmpty()) {
      seen.add(Shading.OFFCUT);
    }
    if (!losses.trimmed().spans().isEmpty()) {
      seen.add(Shading.TRIM);
    }
    if (!losses.avoided().spans().isEmpty()) {
      seen.add(Shading.AVOID);
    }
    if (board().cuts().stream().anyMatch(Cut::spare)) {
      seen.add(Shading.SPARE);
    }
    return seen;
  }

  /** With its lower left corner there. */
  List<Figure> figures(double left, double bottom) {
    BoardPlace here = place.at(left, bottom);
    PaperBox whole = here.stretch(new Span(0, board().length().nanometres()), board().width());
    List<Figure> figures = new ArrayList<>();
    figures.addAll(shaded(losses.trimmed(), Shading.TRIM, here));
    figures.addAll(saw(here, whole));
    for (Offcut offcut : board().offcuts()) {
      figures.addAll(Shading.OFFCUT.figures(here.box(offcut)));
    }
    figures.addAll(shaded(losses.avoided(), Shading.AVOID, here));
    figures.addAll(pieces(here));
    for (Offcut offcut : board().offcuts()) {
      PaperBox clear = lettering.clear(offcut, here);
      lettering.inside(offcut).ifPresent(text -> figures.addAll(onHatch(text, clear)));
    }
    figures.add(whole.outline(LineKind.VISIBLE));
    return figures;
  }

  /** Around the pieces; beside what is ripped off, and behind it where the board is cut through. */
  private List<Figure> saw(BoardPlace here, PaperBox whole) {
    double along = losses.kerf().inMm() * here.along();
    double across = losses.kerf().inMm() * here.across();
    return Stream.concat(
            board().cuts().stream().map(cut -> here.box(cut).grown(along, across)),
            board().offcuts().stream()
                .map(offcut -> here.box(offcut).grown(0, across))
                .map(box -> new PaperBox(box.left(), box.bottom(), box.right() + along, box.top())))
        .map(sawn -> sawn.within(whole).fill(Figure.Shade.INK))
        .toList();
  }

  private List<Figure> shaded(Spans spans, Shading shading, BoardPlace here) {
    return spans.spans().stream()
        .flatMap(span -> shading.figures(here.stretch(span, board().width())).stream())
        .toList();
  }

  /** Each by itself, named for whoever cannot see the drawing or cannot read what is so small. */
  private List<Figure> pieces(BoardPlace here) {
    List<Figure> pieces = new ArrayList<>();
    for (Cut cut : board().cuts()) {
      String id =
          String.format(
              Locale.ROOT, "board-%s-piece-%d", board().marks().get(0), pieces.size() + 1);
      pieces.add(new Figure.Cluster(id, lettering.text(cut), piece(cut, here.box(cut))));
    }
    return pieces;
  }

  private List<Figure> piece(Cut cut, PaperBox box) {
    List<Figure> figures = new ArrayList<>();
    if (cut.spare()) {
      figures.addAll(Shading.SPARE.figures(box));
    } else {
      figures.add(box.fill(Figure.Shade.PAPER));
      figures.add(box.outline(LineKind.THIN));
    }
    lettering.inside(cut).ifPresent(text -> figures.add(centred(text, box)));
    return figures;
  }

  private static List<Figure> onHatch(String text, PaperBox box) {
    PaperBox patch = BoardLettering.patch(text, box);
    return List.of(patch.within(box).fill(Figure.Shade.PAPER), centred(text, box));
  }

  private static Figure centred(String text, PaperBox box) {
    double height = BoardLettering.HEIGHT;
    return Paragraph.text(
        box.middleX(), box.middleY() - height / 2, height, text, Figure.Align.MIDDLE);
  }
}
