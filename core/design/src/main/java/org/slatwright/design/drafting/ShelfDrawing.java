package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Piece;
import org.slatwright.design.drafting.DimensionChain.Link;
import org.slatwright.design.drafting.HeightSteps.Step;
import org.slatwright.design.drafting.Spans.Span;

/**
 * A shelf from above, its front below: slats with their marks and fasteners, the rails under them
 * dashed, margins and gaps at the left, frames and bays below.
 */
final class ShelfDrawing implements SheetBlock {

  private static final double EDGE = 3;
  private static final double ABOVE = 4;
  private static final double MARK = 2.5;
  private static final double MARK_ROOM = 3.7;
  private static final double MARK_BESIDE = 0.5;

  private final ShelfUnit unit;
  private final LengthFormat lengths;
  private final Scale scale;
  private final Shown shown;
  private final Box extent;
  private final ChainPair depths;
  private final ChainPair widths;
  private final Optional<ChainPair> slats;

  /**
   * Of a shelf.
   *
   * @param shown of its length
   */
  ShelfDrawing(ShelfUnit unit, LengthFormat lengths, Scale scale, Shown shown) {
    this.unit = unit;
    this.lengths = lengths;
    this.scale = scale;
    this.shown = shown;
    this.extent = unit.assembly().extent();
    this.depths = depths();
    this.widths = widths();
    this.slats = slatLengths();
  }

  /** All of its length. */
  static Shown whole(ShelfUnit unit) {
    Box extent = unit.assembly().extent();
    return Shown.all(extent.low().x().nanometres(), extent.high().x().nanometres());
  }

  /** The first bay with both its frames and the last frame, {@code ends} beside each of them. */
  static Shown broken(ShelfUnit unit, Length ends) {
    Box extent = unit.assembly().extent();
    int last = unit.frames().size() - 1;
    List<Span> stretches = new ArrayList<>();
    for (int frame : last == 1 ? List.of(0, 1) : List.of(0, 1, last)) {
      Box upright = unit.frames().get(frame).upright();
      Length from = frame == 0 ? extent.low().x() : upright.low().x().minus(ends);
      Length to = frame == last ? extent.high().x() : upright.high().x().plus(ends);
      stretches.add(new Span(from.nanometres(), to.nanometres()));
    }
    return Shown.of(extent.low().x().nanometres(), extent.high().x().nanometres(), stretches);
  }

  /** Every edge, or the pitch of slats that are all alike where those would not read. */
  private ChainPair depths() {
    List<Length> places = List.copyOf(unit.depths());
    ChainPair all =
        ChainPair.up(
            Link.between(places, place -> onPaper(place.minus(places.get(0))), lengths), lengths);
    return all.isEasyToRead() || !isEven() ? all : pitches(places);
  }

  private boolean isEven() {
    List<Piece> row = unit.rows().get(0);
    return row.size() > 2
        && row.stream().map(slat -> slat.box().size(Axis.Y)).distinct().count() == 1
        && gaps(row).stream().distinct().count() == 1;
  }

  private static List<Length> gaps(List<Piece> row) {
    List<Length> gaps = new ArrayList<>();
    for (int i = 1; i < row.size(); i++) {
      gaps.add(row.get(i).box().low().y().minus(row.get(i - 1).box().high().y()));
    }
    return gaps;
  }

  private ChainPair pitches(List<Length> places) {
    List<Piece> row = unit.rows().get(0);
    Box first = row.get(0).box();
    Length width = first.size(Axis.Y);
    Length pitch = width.plus(gaps(row).get(0));
    Length all = pitch.times(row.size() - 1L);
    Length before = first.low().y().minus(places.get(0));
    Length after = places.get(places.size() - 1).minus(row.get(row.size() - 1).box().high().y());
    List<Step> steps = new ArrayList<>();
    add(steps, before);
    steps.add(new Step(all, HeightSteps.repeated(row.size() - 1, pitch, all, lengths)));
    add(steps, width);
    add(steps, after);
    return ChainPair.up(HeightSteps.links(steps, Length.ZERO, this::onPaper), lengths);
  }

  private void add(List<Step> steps, Length length) {
    if (length.isPositive()) {
      steps.add(new Step(length, lengths.number(length)));
    }
  }

  private ChainPair widths() {
    Box first = unit.frames().get(0).upright();
    Box second = unit.frames().get(1).upright();
    Box last = unit.frames().get(unit.frames().size() - 1).upright();
    WidthSteps steps =
        new WidthSteps(
            first.low().x().minus(extent.low().x()),
            first.size(Axis.X),
            second.low().x().minus(first.high().x()),
            unit.frames().size() - 1,
            extent.high().x().minus(last.high().x()));
    return ChainPair.across(
        HeightSteps.links(steps.of(lengths), extent.low().x(), this::along), lengths);
  }

  /** Where they are not as long as the shelf; those between the first and the last are alike. */
  private Optional<ChainPair> slatLengths() {
    List<Box> boxes = unit.rows().stream().map(row -> row.get(0).box()).toList();
    Box first = boxes.get(0);
    int between = boxes.size() - 2;
    if (boxes.size() == 1 && first.size(Axis.X).equals(extent.size(Axis.X))) {
      return Optional.empty();
    }
    List<Step> steps = new ArrayList<>();
    add(steps, first.size(Axis.X));
    if (between > 1) {
      Length inner = boxes.get(1).size(Axis.X);
      Length all = inner.times(between);
      steps.add(new Step(all, HeightSteps.repeated(between, inner, all, lengths)));
    } else if (between == 1) {
      add(steps, boxes.get(1).size(Axis.X));
    }
    if (between >= 0) {
      add(steps, boxes.get(boxes.size() - 1).size(Axis.X));
    }
    return Optional.of(
        ChainPair.acrossAlone(HeightSteps.links(steps, first.low().x(), this::along)));
  }

  private double onPaper(Length length) {
    return length.inMm() * scale.factor();
  }

  /** Where a place along the shelf lies, in mm from its left end. */
  private double along(Length x) {
    return shown.place(x.nanometres(), scale.factor());
  }

  /** Whether every slat has its mark on it, and all numbers stand near what they measure. */
  boolean isEasyToRead() {
    return depths.isEasyToRead() && isMarked();
  }

  private boolean isMarked() {
    return unit.slats().stream().filter(this::isShown).allMatch(this::hasRoom);
  }

  private boolean isShown(Piece slat) {
    return room(slat).isPresent();
  }

  @Override
  public double width() {
    return Math.max(
        left() + shown.size(scale.factor()) + after() + EDGE, caption().width() + 2 * EDGE);
  }

  @Override
  public double height() {
    return below() + high() + above() + Caption.HEIGHT;
  }

  private double left() {
    double before = Math.max(widths.before(), slats.map(ChainPair::before).orElse(0.0));
    return EDGE + Math.max(depths.depth(), before);
  }

  private double after() {
    return Math.max(widths.after(), slats.map(ChainPair::after).orElse(0.0));
  }

  private double below() {
    return widths.depth() + EDGE;
  }

  private double above() {
    return ABOVE + slats.map(ChainPair::depth).orElse(0.0);
  }

  private double high() {
    return onPaper(extent.size(Axis.Y));
  }

  private Caption caption() {
    List<Piece> row = unit.rows().get(0);
    List<String> gaps = gaps(row).stream().distinct().map(lengths::withUnit).toList();
    String count = row.size() + (row.size() == 1 ? " slat" : " slats") + " from front to back";
    String marks =
        isMarked()
            ? ""
            : ": " + row.stream().map(slat -> slat.part().mark()).collect(Collectors.joining(", "));
    String said = gaps.isEmpty() ? "" : ", gaps " + String.join(" or ", gaps);
    return new Caption(unit.name() + ", scale " + scale, count + marks + said);
  }

  @Override
  public View view(double atLeft, double atBottom) {
    String id = unit.name().toLowerCase(Locale.ROOT).replace(' ', '-').replace(",", "");
    RackView view =
        new RackView(
            unit.assembly(),
            Projection.TOP,
            scale,
            id,
            shown,
            Shown.all(extent.low().y().nanometres(), extent.high().y().nanometres()),
            atLeft + left(),
            atBottom + below());
    List<Figure> figures = new ArrayList<>(view.figures());
    figures.addAll(view.breaks());
    unit.fasteners().forEach(each -> figures.addAll(Crosses.at(each, view, Crosses.SMALL)));
    unit.rows().forEach(row -> figures.addAll(marks(row, view)));
    Length front = unit.frames().get(0).rail().box().low().y();
    figures.addAll(depths.figures(view.y(front.nanometres()), view.left(), -1));
    figures.addAll(widths.figures(view.left(), view.bottom(), -1));
    slats.ifPresent(chain -> figures.addAll(chain.figures(view.left(), view.top(), 1)));
    figures.addAll(caption().figures(atLeft + EDGE, atBottom + height()));
    return new View(id, unit.name() + " from above", Optional.of(scale), figures);
  }

  /** On every slat of a row, in the longest stretch between two frames that is shown. */
  private List<Figure> marks(List<Piece> row, RackView view) {
    List<Figure> marks = new ArrayList<>();
    for (Piece slat : row) {
      if (hasRoom(slat)) {
        PaperBox room = room(slat).orElseThrow();
        marks.add(
            Paragraph.text(
                view.left() + room.middleX(),
                view.cover(slat).middleY() - MARK / 2,
                MARK,
                slat.part().mark(),
                Figure.Align.MIDDLE));
      }
    }
    return marks;
  }

  /** Whether its mark has. */
  private boolean hasRoom(Piece slat) {
    double wide = Lettering.width(slat.part().mark(), MARK) + 2 * MARK_BESIDE;
    return onPaper(slat.box().size(Axis.Y)) >= MARK_ROOM
        && room(slat).filter(room -> room.width() >= wide).isPresent();
  }

  /** From the left end of the shelf; nothing where none of it is shown. */
  private Optional<PaperBox> room(Piece slat) {
    Box box = slat.box();
    List<PaperBox> stretches = new ArrayList<>();
    for (int i = 1; i < unit.frames().size(); i++) {
      Length from = Length.max(box.low().x(), unit.frames().get(i - 1).upright().high().x());
      Length to = Length.min(box.high().x(), unit.frames().get(i).upright().low().x());
      for (Span span : shown.of(from.nanometres(), to.nanometres())) {
        stretches.add(
            new PaperBox(along(new Length(span.from())), 0, along(new Length(span.to())), 0));
      }
    }
    return stretches.stream().reduce((one, other) -> other.width() > one.width() ? other : one);
  }
}
