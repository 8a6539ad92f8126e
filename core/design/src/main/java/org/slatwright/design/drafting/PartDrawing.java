package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.design.drafting.DimensionChain.Link;
import org.slatwright.design.drafting.RunningDimensions.Side;

/**
 * One part lying with its start end at the left and its face side towards the eye: its holes
 * counted from the start end, and the end that the projection shows beside it.
 */
final class PartDrawing implements SheetBlock {

  private static final double EDGE = 3;
  private static final double BETWEEN = 8;
  private static final double OVERRUN = 1.5;

  private final Part part;
  private final PartWords words;
  private final LengthFormat lengths;
  private final Scale scale;
  private final Shown shown;
  private final PartEnd end;
  private final List<RunningDimensions> running;
  private final ChainPair length;
  private final Optional<ChainPair> depths;
  private final Optional<ChainPair> width;

  /**
   * Of a part.
   *
   * @param shown how much of its length
   */
  PartDrawing(Part part, LengthFormat lengths, Scale scale, Shown shown) {
    this.part = part;
    this.words = new PartWords(part, lengths, scale);
    this.lengths = lengths;
    this.scale = scale;
    this.shown = shown;
    this.end = PartEnd.of(part, lengths, scale);
    this.running = running();
    this.length = ChainPair.across(along(List.of(Length.ZERO, part.shape().length())), lengths);
    this.depths = depths();
    this.width = across();
  }

  /** Of holes in the face side: below the part, or by turns below and above it. */
  private List<RunningDimensions> running() {
    List<Length> centres = holes(Face.FACE_SIDE).map(Hole::along).distinct().sorted().toList();
    if (centres.isEmpty()) {
      return List.of();
    }
    RunningDimensions all = running(centres);
    return all.isRoomy()
        ? List.of(all)
        : List.of(running(everySecond(centres, 0)), running(everySecond(centres, 1)));
  }

  private static List<Length> everySecond(List<Length> all, int from) {
    return IntStream.range(0, all.size()).filter(i -> i % 2 == from).mapToObj(all::get).toList();
  }

  /** With both ends. */
  private RunningDimensions running(List<Length> centres) {
    List<Length> values = new ArrayList<>(List.of(Length.ZERO, part.shape().length()));
    values.addAll(centres);
    return RunningDimensions.of(values, shown, scale, lengths);
  }

  /** Of holes in the ends. */
  private Optional<ChainPair> depths() {
    TreeSet<Length> places = new TreeSet<>();
    holes(Face.START_END).map(Hole::depth).forEach(places::add);
    holes(Face.FAR_END).map(hole -> part.shape().length().minus(hole.depth())).forEach(places::add);
    if (places.isEmpty()) {
      return Optional.empty();
    }
    places.addAll(List.of(Length.ZERO, part.shape().length()));
    return Optional.of(ChainPair.acrossAlone(along(places)));
  }

  private List<Link> along(Collection<Length> places) {
    return Link.between(places, this::place, lengths);
  }

  /** Where a length from the start end lies, in mm from it. */
  private double place(Length along) {
    return shown.place(along.nanometres(), scale.factor());
  }

  private double onPaper(Length length) {
    return length.inMm() * scale.factor();
  }

  /** Where the end does not say it. */
  private Optional<ChainPair> across() {
    if (!part.holes().isEmpty()) {
      return Optional.empty();
    }
    Length value = part.shape().width();
    String number = lengths.number(value);
    String text = part.shape() instanceof Shape.Rod ? words.diameter(value) : number;
    return Optional.of(ChainPair.upAlone(List.of(new Link(0, high(), value, text))));
  }

  private Stream<Hole> holes(Face face) {
    return part.holes().stream().filter(hole -> hole.face() == face);
  }

  @Override
  public double width() {
    double drawn = left() + drawnLength() + between() + end.width() + EDGE;
    return Math.max(drawn, EDGE + words.caption().width() + EDGE);
  }

  @Override
  public double height() {
    return below() + above() + Caption.HEIGHT;
  }

  private double drawnLength() {
    return shown.size(scale.factor());
  }

  private double high() {
    return onPaper(part.shape().width());
  }

  private double left() {
    double before = running.stream().mapToDouble(RunningDimensions::before).max().orElse(0);
    double beside = width.map(ChainPair::depth).orElse(0.0);
    double chains = Math.max(length.before(), depths.map(ChainPair::before).orElse(0.0));
    return EDGE + Math.max(Math.max(beside, before), chains);
  }

  private double between() {
    double after = Math.max(length.after(), depths.map(ChainPair::after).orElse(0.0));
    for (RunningDimensions each : running) {
      after = Math.max(after, each.after(drawnLength()));
    }
    return after + BETWEEN + end.before();
  }

  /** From the axis of the part down. */
  private double below() {
    double beside = running.isEmpty() ? length.depth() : running.get(0).depth();
    return EDGE + Math.max(high() / 2 + beside, end.high() / 2 + end.below());
  }

  /** From the axis of the part up. */
  private double above() {
    double beside = running.size() < 2 ? 0 : running.get(1).depth();
    double chain = depths.map(ChainPair::depth).orElse(0.0);
    return EDGE + Math.max(high() / 2 + Math.max(beside, chain), end.high() / 2 + end.above());
  }

  @Override
  public View view(double atLeft, double atBottom) {
    double left = atLeft + left();
    double axis = atBottom + below();
    double bottom = axis - high() / 2;
    double right = left + drawnLength();
    double top = axis + high() / 2;
    List<Figure> figures = new ArrayList<>();
    figures.addAll(words.caption().figures(atLeft + EDGE, atBottom + height()));
    figures.addAll(part(left, bottom, right, top));
    width.ifPresent(chain -> figures.addAll(chain.figures(bottom, left, -1)));
    if (running.isEmpty()) {
      figures.addAll(length.figures(left, bottom, -1));
    } else {
      figures.addAll(running.get(0).figures(Side.BELOW, left, bottom));
    }
    running.stream().skip(1).forEach(each -> figures.addAll(each.figures(Side.ABOVE, left, top)));
    depths.ifPresent(chain -> figures.addAll(chain.figures(left, top, 1)));
    figures.addAll(end.figures(right + between(), axis));
    return new View(
        "part-" + part.mark(), part.mark() + " " + part.name(), Optional.of(scale), figures);
  }

  private List<Figure> part(double left, double bottom, double right, double top) {
    List<Figure> figures = new ArrayList<>();
    for (Spans.Span span : shown.kept().spans()) {
      double from = left + place(new Length(span.from()));
      double to = left + place(new Length(span.to()));
      figures.add(Strokes.line(from, bottom, to, bottom, LineKind.VISIBLE));
      figures.add(Strokes.line(from, top, to, top, LineKind.VISIBLE));
    }
    figures.add(Strokes.line(left, bottom, left, top, LineKind.VISIBLE));
    figures.add(Strokes.line(right, bottom, right, top, LineKind.VISIBLE));
    shown
        .breaks(scale.factor())
        .forEach(x -> figures.add(BreakLine.upright(left + x, bottom, top)));
    part.holes().forEach(hole -> figures.addAll(hole(hole, left, bottom)));
    if (part.shape() instanceof Shape.Rod) {
      double middle = (bottom + top) / 2;
      figures.add(Strokes.line(left - OVERRUN, middle, right + OVERRUN, middle, LineKind.CENTRE));
    }
    return figures;
  }

  /** Through the face side a circle; in an end what is hidden in the wood, and its axis. */
  private List<Figure> hole(Hole hole, double left, double bottom) {
    double radius = onPaper(hole.diameter()) / 2;
    if (hole.face() == Face.FACE_SIDE) {
      PaperPoint centre =
          new PaperPoint(left + place(hole.along()), bottom + onPaper(hole.across()));
      return List.of(new Figure.Circle(centre, radius, LineKind.VISIBLE));
    }
    boolean atStart = hole.face() == Face.START_END;
    Length inner = atStart ? hole.depth() : part.shape().length().minus(hole.depth());
    double mouth = left + (atStart ? 0 : drawnLength());
    double floor = left + place(inner);
    double axis = bottom + onPaper(hole.along());
    double beyond = atStart ? OVERRUN : -OVERRUN;
    return List.of(
        Strokes.line(mouth, axis + radius, floor, axis + radius, LineKind.HIDDEN),
        Strokes.line(mouth, axis - radius, floor, axis - radius, LineKind.HIDDEN),
        Strokes.line(floor, axis - radius, floor, axis + radius, LineKind.HIDDEN),
        Strokes.line(mouth - beyond, axis, floor + beyond, axis, LineKind.CENTRE));
  }
}
