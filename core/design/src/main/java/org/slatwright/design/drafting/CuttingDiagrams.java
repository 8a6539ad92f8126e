package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.design.sizing.Rack;

/**
 * How every board is cut, all to one scale along their length, on sheets that lie, since boards are
 * long.
 */
final class CuttingDiagrams implements SheetDrawing {

  static final String NAME = "cutting-diagrams";
  static final String TITLE = "Cutting diagrams";

  private static final double PAD = 4;
  private static final double GAP = 6;
  private static final double LETTERING = 2.5;

  /** Least height of a strip that can be lettered, and most that a board may have, in mm. */
  private static final double LEAST_HIGH = 6;

  private static final double MOST_HIGH = 30;

  private static final double KEY_WIDE = 12;
  private static final double KEY_HIGH = 3.4;
  private static final double KEY_STEP = 4.8;

  private final Rack rack;
  private final SheetFrame frame;
  private final Scale scale;
  private final List<RunningText<? extends BoardDrawing>> timbers;

  private CuttingDiagrams(
      Rack rack, SheetFrame frame, Scale scale, List<RunningText<? extends BoardDrawing>> timbers) {
    this.rack = rack;
    this.frame = frame;
    this.scale = scale;
    this.timbers = timbers;
  }

  /** As many sheets as they take; none where nothing is cut. */
  static List<SheetDrawing> of(Rack rack, CuttingPlan cutting) {
    SheetFrame frame = new SheetFrame(rack.shop().paper(), true);
    double room = frame.width() - 2 * PAD;
    double height = frame.height() - TitleBlock.HEIGHT - 2 * PAD;
    Scale scale =
        Scales.largest(rack.units(), candidate -> fits(cutting, candidate.factor(), room));
    List<RunningText<? extends BoardDrawing>> texts =
        IntStream.range(0, cutting.timbers().size())
            .<RunningText<? extends BoardDrawing>>mapToObj(
                i -> text("timber-" + (i + 1), cutting.timbers().get(i), rack, scale, room))
            .toList();
    return TextPages.of(texts, height, GAP).stream()
        .<SheetDrawing>map(page -> new CuttingDiagrams(rack, frame, scale, page))
        .toList();
  }

  private static boolean fits(CuttingPlan cutting, double factor, double room) {
    return cutting.timbers().stream()
        .flatMap(timber -> timber.boards().stream())
        .allMatch(
            board ->
                board.length().inMm() * factor <= room
                    && board.width().inMm() * factor <= MOST_HIGH);
  }

  private static RunningText<BoardDrawing> text(
      String id, TimberCuts timber, Rack rack, Scale scale, double room) {
    LengthFormat lengths = rack.lengths();
    double along = scale.factor();
    double across = across(timber, along);
    BoardPlace place = new BoardPlace(0, 0, along, across);
    List<String> details =
        Paragraph.wrap(details(timber, lengths, across > along), LETTERING, room);
    List<BoardDrawing> boards =
        timber.boards().stream()
            .map(
                board ->
                    new BoardDrawing(
                        new Losses(board, timber.kerf(), timber.endTrim()), place, lengths, room))
            .toList();
    return new RunningText<>(
        id,
        timber.timber(),
        boards,
        (heading, some) -> new TimberBoards(Paragraph.wrap(heading, 5, room), details, some));
  }

  /** Larger than to scale where strips would else be too low for lettering. */
  private static double across(TimberCuts timber, double along) {
    double narrowest = widths(timber).min().orElse(1);
    double widest = widths(timber).max().orElse(1);
    return Math.max(along, Math.min(LEAST_HIGH / narrowest, MOST_HIGH / widest));
  }

  private static DoubleStream widths(TimberCuts timber) {
    return timber.boards().stream()
        .flatMapToDouble(
            board ->
                DoubleStream.concat(
                    DoubleStream.of(board.width().inMm()),
                    board.cuts().stream().map(CutBoard.Cut::width).mapToDouble(Length::inMm)));
  }

  private static String details(TimberCuts timber, LengthFormat lengths, boolean stretched) {
    List<String> said = new ArrayList<>();
    said.add("Saw kerf " + lengths.withUnit(timber.kerf()));
    if (timber.endTrim().isPositive()) {
      said.add(lengths.withUnit(timber.endTrim()) + " squared off each end");
    }
    if (!timber.quality().isEmpty()) {
      said.add(
          timber.quality().substring(0, 1).toUpperCase(Locale.ROOT)
              + timber.quality().substring(1));
    }
    for (MissingPieces missing : timber.missing()) {
      said.add(
          "NO BOARD IS LEFT for "
              + missing.count()
              + " × "
              + missing.mark()
              + " "
              + lengths.withUnit(missing.length()));
    }
    if (stretched) {
      said.add("Widths are drawn larger than to scale");
    }
    return String.join(". ", said) + ".";
  }

  @Override
  public Sheet sheet(int number, int count) {
    List<View> views = new ArrayList<>();
    views.add(frame.view());
    views.addAll(TextPages.views(timbers, left(), frame.top() - PAD, GAP, Optional.of(scale)));
    views.add(new View("key", "Key", Optional.empty(), key()));
    views.add(TitleBlock.of(rack, TITLE, scale, number, count).view(frame));
    String name = String.format(Locale.ROOT, "drawings/%02d-%s", number, NAME);
    return new Sheet(name, TITLE, rack.shop().paper(), frame.landscape(), views);
  }

  private double left() {
    return frame.left() + PAD;
  }

  /** Of what is to be seen on this sheet; beside the title block. */
  private List<Figure> key() {
    List<Figure> figures = new ArrayList<>();
    double y = frame.bottom() + TitleBlock.HEIGHT;
    for (Shading shading : shadings()) {
      PaperBox box = new PaperBox(left(), y - KEY_HIGH, left() + KEY_WIDE, y);
      figures.addAll(shading.figures(box));
      figures.add(box.outline(LineKind.VISIBLE));
      figures.add(
          Paragraph.text(
              box.right() + 2,
              box.middleY() - LETTERING / 2,
              LETTERING,
              shading.words(),
              Figure.Align.START));
      y -= KEY_STEP;
    }
    return figures;
  }

  private Set<Shading> shadings() {
    Set<Shading> seen = EnumSet.noneOf(Shading.class);
    timbers.stream()
        .flatMap(timber -> timber.items().stream())
        .forEach(board -> seen.addAll(board.shadings()));
    return seen;
  }
}
