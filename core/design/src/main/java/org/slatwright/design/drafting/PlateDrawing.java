package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.drafting.DimensionChain.Link;

/**
 * One jig plate with everything that is needed to mark it out by hand: the straight edges of its
 * boundary in chains below and at the left, those of its openings and the centres of its bores in
 * chains above and at the right, and the overall sizes outside all.
 */
final class PlateDrawing implements SheetBlock {

  private static final double CAPTION = 3.5;
  private static final double CAPTION_FOOT = 5.5;
  private static final double EDGE = 3;
  private static final double CHAIN = 6;

  private final Plate plate;
  private final LengthFormat lengths;
  private final Scale scale;
  private final ChainPair widths;
  private final ChainPair heights;
  private final Optional<DimensionChain> insideAcross;
  private final Optional<DimensionChain> insideUp;

  PlateDrawing(Plate plate, LengthFormat lengths, Scale scale) {
    this.plate = plate;
    this.lengths = lengths;
    this.scale = scale;
    this.widths = ChainPair.across(links(edges(Point2::x)), lengths);
    this.heights = ChainPair.up(links(edges(Point2::y)), lengths);
    boolean hasInside = !plate.openings().isEmpty() || !plate.bores().isEmpty();
    this.insideAcross =
        hasInside ? Optional.of(new AcrossChain(links(inside(Point2::x)))) : Optional.empty();
    this.insideUp =
        hasInside ? Optional.of(new UpChain(links(inside(Point2::y)))) : Optional.empty();
  }

  @Override
  public double width() {
    double drawn = left() + size(Point2::x) + right();
    return Math.max(drawn, Lettering.width(caption(), CAPTION) + EDGE);
  }

  @Override
  public double height() {
    return above() + size(Point2::y) + below();
  }

  @Override
  public View view(double left, double bottom) {
    OutlineView view = new OutlineView(scale, left + left(), bottom + below());
    List<Figure> figures = new ArrayList<>(view.figures(plate.boundary()));
    plate.openings().forEach(opening -> figures.addAll(view.figures(opening)));
    plate.bores().forEach(bore -> figures.addAll(view.bore(bore)));
    double right = view.left() + size(Point2::x);
    double top = view.bottom() + size(Point2::y);
    figures.addAll(widths.figures(view.left(), view.bottom(), -1));
    figures.addAll(heights.figures(view.bottom(), view.left(), -1));
    insideAcross.ifPresent(chain -> figures.addAll(chain.figures(view.left(), top + CHAIN, top)));
    insideUp.ifPresent(chain -> figures.addAll(chain.figures(view.bottom(), right + CHAIN, right)));
    figures.addAll(captions(left, bottom + CAPTION_FOOT));
    String title = plate.mark() + " " + plate.name();
    return new View("plate-" + plate.mark(), title, Optional.of(scale), figures);
  }

  private List<Figure> captions(double left, double baseline) {
    double below = baseline - DimensionChain.LETTERING * Paragraph.LINE_SPACING;
    return List.of(
        Paragraph.text(left, baseline, CAPTION, caption(), Figure.Align.START),
        Paragraph.text(left, below, DimensionChain.LETTERING, details(), Figure.Align.START));
  }

  private String caption() {
    return plate.mark()
        + "  "
        + plate.name()
        + ", "
        + plate.quantity()
        + " off, "
        + lengths.withUnit(plate.thickness());
  }

  /** What no chain says: bores and rounded corners. */
  private String details() {
    return Stream.concat(
            plate.bores().stream()
                .map(Outline.Circle::diameter)
                .distinct()
                .map(diameter -> "holes ø " + lengths.withUnit(diameter)),
            plate.boundary().edges().stream()
                .filter(edge -> edge instanceof Outline.Arc)
                .map(arc -> Length.roundedMm(((Outline.Arc) arc).radiusMm()))
                .distinct()
                .map(radius -> "round corners R " + lengths.withUnit(radius)))
        .collect(Collectors.joining(", "));
  }

  private double left() {
    return heights.depth() + EDGE;
  }

  private double below() {
    return widths.depth() + EDGE + CAPTION + CAPTION_FOOT;
  }

  private double right() {
    return insideUp.map(chain -> CHAIN + chain.depth() + EDGE).orElse(EDGE);
  }

  private double above() {
    return insideAcross.map(chain -> CHAIN + chain.depth() + 2).orElse(EDGE);
  }

  private double size(Function<Point2, Length> coordinate) {
    return edges(coordinate).last().inMm() * scale.factor();
  }

  private List<Link> links(TreeSet<Length> stops) {
    return Link.between(stops, stop -> stop.inMm() * scale.factor(), lengths);
  }

  /** Where a straight edge of the boundary lies square to that coordinate. */
  private TreeSet<Length> edges(Function<Point2, Length> coordinate) {
    return new TreeSet<>(edges(plate.boundary(), coordinate).toList());
  }

  /** Where one of an opening does, where the bores' centres lie, and the plate's own ends. */
  private TreeSet<Length> inside(Function<Point2, Length> coordinate) {
    TreeSet<Length> stops = new TreeSet<>();
    plate.openings().forEach(opening -> stops.addAll(edges(opening, coordinate).toList()));
    plate.bores().forEach(bore -> stops.add(coordinate.apply(bore.centre())));
    TreeSet<Length> edges = edges(coordinate);
    stops.addAll(List.of(edges.first(), edges.last()));
    return stops;
  }

  private static Stream<Length> edges(Outline outline, Function<Point2, Length> coordinate) {
    if (outline instanceof Outline.Circle circle) {
      return Stream.of(coordinate.apply(circle.centre()));
    }
    return ((Outline.Path) outline)
        .edges().stream()
            .filter(edge -> edge instanceof Outline.Line)
            .filter(edge -> coordinate.apply(edge.from()).equals(coordinate.apply(edge.to())))
            .map(edge -> coordinate.apply(edge.from()));
  }
}
