package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.drafting.DimensionChain.Link;

/**
 * One jig plate with everything that is needed to mark it out by hand: each straight edge and hole
 * centre in one chain below and one at the left, and the overall sizes outside them.
 */
final class PlateDrawing {

  private static final double FIRST_CHAIN = 7;
  private static final double NEXT_ACROSS = 8;
  private static final double NEXT_UP = 11;
  private static final double LEFT_PAD = FIRST_CHAIN + NEXT_UP + 10;
  private static final double RIGHT_PAD = 8;
  private static final double TOP_PAD = 5;
  private static final double CAPTION = 3.5;
  private static final double BELOW = FIRST_CHAIN + NEXT_ACROSS + 5 + 2 * CAPTION;

  private final Plate plate;
  private final LengthFormat lengths;
  private final Scale scale;

  PlateDrawing(Plate plate, LengthFormat lengths, Scale scale) {
    this.plate = plate;
    this.lengths = lengths;
    this.scale = scale;
  }

  Plate plate() {
    return plate;
  }

  /** With room for its dimensions and caption, in mm on paper. */
  double width() {
    return LEFT_PAD
        + Math.max(drawnWidth(), Lettering.width(caption(), CAPTION) - LEFT_PAD)
        + RIGHT_PAD;
  }

  double height() {
    return TOP_PAD + drawnHeight() + BELOW;
  }

  /** Drawn with the lower left corner of its room there. */
  List<Figure> figures(double left, double bottom) {
    OutlineView view = new OutlineView(scale, left + LEFT_PAD, bottom + BELOW);
    List<Figure> figures = new ArrayList<>(view.figures(plate.boundary()));
    plate.openings().forEach(opening -> figures.addAll(view.figures(opening)));
    plate.bores().forEach(bore -> figures.addAll(view.bore(bore)));
    figures.addAll(acrossChains(view));
    figures.addAll(upChains(view));
    figures.add(Paragraph.text(left, bottom + CAPTION, CAPTION, caption(), Figure.Align.START));
    return figures;
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

  private double drawnWidth() {
    return stops(Point2::x).last().inMm() * scale.factor();
  }

  private double drawnHeight() {
    return stops(Point2::y).last().inMm() * scale.factor();
  }

  private List<Figure> acrossChains(OutlineView view) {
    TreeSet<Length> stops = stops(Point2::x);
    double edge = view.bottom();
    List<Figure> figures =
        new ArrayList<>(DimensionChain.across(edge - FIRST_CHAIN, edge, links(stops, view.left())));
    figures.addAll(
        DimensionChain.across(
            edge - FIRST_CHAIN - NEXT_ACROSS, edge - FIRST_CHAIN, overall(stops, view.left())));
    return figures;
  }

  private List<Figure> upChains(OutlineView view) {
    TreeSet<Length> stops = stops(Point2::y);
    double edge = view.left();
    List<Figure> figures =
        new ArrayList<>(DimensionChain.up(edge - FIRST_CHAIN, edge, links(stops, view.bottom())));
    figures.addAll(
        DimensionChain.up(
            edge - FIRST_CHAIN - NEXT_UP, edge - FIRST_CHAIN, overall(stops, view.bottom())));
    return figures;
  }

  private List<Link> links(TreeSet<Length> stops, double origin) {
    List<Link> links = new ArrayList<>();
    Length from = null;
    for (Length to : stops) {
      if (from != null) {
        links.add(link(from, to, origin));
      }
      from = to;
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

  /** Where a straight edge lies square to that coordinate, or a hole's centre. */
  private TreeSet<Length> stops(Function<Point2, Length> coordinate) {
    TreeSet<Length> stops = new TreeSet<>();
    Stream.concat(Stream.of(plate.boundary()), plate.openings().stream())
        .map(outline -> stops(outline, coordinate))
        .forEach(stops::addAll);
    plate.bores().forEach(bore -> stops.add(coordinate.apply(bore.centre())));
    return stops;
  }

  private static Collection<Length> stops(Outline outline, Function<Point2, Length> coordinate) {
    if (outline instanceof Outline.Circle circle) {
      return List.of(coordinate.apply(circle.centre()));
    }
    return ((Outline.Path) outline)
        .edges().stream()
            .filter(edge -> edge instanceof Outline.Line)
            .filter(edge -> coordinate.apply(edge.from()).equals(coordinate.apply(edge.to())))
            .map(edge -> coordinate.apply(edge.from()))
            .toList();
  }
}
