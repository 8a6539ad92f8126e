package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
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

  private static final double FIRST_CHAIN = 7;
  private static final double NEXT_ACROSS = 8;
  private static final double NEXT_UP = 12;
  private static final double SIDE_NUMBERS = 9;
  private static final double LEFT = FIRST_CHAIN + NEXT_UP + SIDE_NUMBERS;
  private static final double RIGHT = FIRST_CHAIN + SIDE_NUMBERS;
  private static final double ABOVE = FIRST_CHAIN + 7;
  private static final double CAPTION = 3.5;
  private static final double BELOW = FIRST_CHAIN + 3 + 2 * CAPTION;

  private final Plate plate;
  private final LengthFormat lengths;
  private final Scale scale;

  PlateDrawing(Plate plate, LengthFormat lengths, Scale scale) {
    this.plate = plate;
    this.lengths = lengths;
    this.scale = scale;
  }

  @Override
  public double width() {
    double drawn = LEFT + size(Point2::x) + RIGHT;
    return Math.max(drawn, Lettering.width(caption(), CAPTION) + CAPTION);
  }

  @Override
  public double height() {
    return above() + size(Point2::y) + below();
  }

  @Override
  public View view(double left, double bottom) {
    OutlineView view = new OutlineView(scale, left + LEFT, bottom + below());
    List<Figure> figures = new ArrayList<>(view.figures(plate.boundary()));
    plate.openings().forEach(opening -> figures.addAll(view.figures(opening)));
    plate.bores().forEach(bore -> figures.addAll(view.bore(bore)));
    figures.addAll(across(view));
    figures.addAll(up(view));
    figures.add(Paragraph.text(left, bottom + CAPTION / 2, CAPTION, caption(), Figure.Align.START));
    String title = plate.mark() + " " + plate.name();
    return new View("plate-" + plate.mark(), title, Optional.of(scale), figures);
  }

  private double above() {
    return inside(Point2::x).isEmpty() ? CAPTION : ABOVE;
  }

  private double below() {
    return edges(Point2::x).size() > 2 ? BELOW + NEXT_ACROSS : BELOW;
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

  private double size(Function<Point2, Length> coordinate) {
    return edges(coordinate).last().inMm() * scale.factor();
  }

  private List<Figure> across(OutlineView view) {
    TreeSet<Length> edges = edges(Point2::x);
    double low = view.bottom();
    double high = low + size(Point2::y);
    List<Figure> figures = new ArrayList<>();
    if (edges.size() > 2) {
      figures.addAll(DimensionChain.across(low - FIRST_CHAIN, low, links(edges, view.left())));
    }
    double overall = edges.size() > 2 ? low - FIRST_CHAIN - NEXT_ACROSS : low - FIRST_CHAIN;
    figures.addAll(DimensionChain.across(overall, low, overall(edges, view.left())));
    TreeSet<Length> inside = inside(Point2::x);
    if (!inside.isEmpty()) {
      inside.addAll(List.of(edges.first(), edges.last()));
      figures.addAll(DimensionChain.across(high + FIRST_CHAIN, high, links(inside, view.left())));
    }
    return figures;
  }

  private List<Figure> up(OutlineView view) {
    TreeSet<Length> edges = edges(Point2::y);
    double left = view.left();
    double right = left + size(Point2::x);
    List<Figure> figures = new ArrayList<>();
    if (edges.size() > 2) {
      figures.addAll(DimensionChain.up(left - FIRST_CHAIN, left, links(edges, view.bottom())));
    }
    double overall = edges.size() > 2 ? left - FIRST_CHAIN - NEXT_UP : left - FIRST_CHAIN;
    figures.addAll(DimensionChain.up(overall, left, overall(edges, view.bottom())));
    TreeSet<Length> inside = inside(Point2::y);
    if (!inside.isEmpty()) {
      inside.addAll(List.of(edges.first(), edges.last()));
      figures.addAll(DimensionChain.up(right + FIRST_CHAIN, right, links(inside, view.bottom())));
    }
    return figures;
  }

  private List<Link> links(TreeSet<Length> stops, double origin) {
    List<Length> inOrder = List.copyOf(stops);
    List<Link> links = new ArrayList<>();
    for (int i = 1; i < inOrder.size(); i++) {
      links.add(link(inOrder.get(i - 1), inOrder.get(i), origin));
    }
    return links;
  }

  private List<Link> overall(TreeSet<Length> stops, double origin) {
    return List.of(link(stops.first(), stops.last(), origin));
  }

  private Link link(Length from, Length to, double origin) {
    Length value = to.minus(from);
    return new Link(
        origin + from.inMm() * scale.factor(),
        origin + to.inMm() * scale.factor(),
        value,
        lengths.number(value));
  }

  /** Where a straight edge of the boundary lies square to that coordinate. */
  private TreeSet<Length> edges(Function<Point2, Length> coordinate) {
    return new TreeSet<>(edges(plate.boundary(), coordinate).toList());
  }

  /** Where one of an opening does, and where the bores' centres lie. */
  private TreeSet<Length> inside(Function<Point2, Length> coordinate) {
    TreeSet<Length> stops = new TreeSet<>();
    plate.openings().forEach(opening -> stops.addAll(edges(opening, coordinate).toList()));
    plate.bores().forEach(bore -> stops.add(coordinate.apply(bore.centre())));
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
