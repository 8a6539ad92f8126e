package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Piece;
import org.slatwright.design.drafting.DimensionChain.Link;
import org.slatwright.design.drafting.Spans.Span;

/**
 * The front slat where it bears on one frame, from above and larger: where brads or screws go, from
 * its front edge, its end and the sides of the frame.
 */
final class BearingDrawing implements SheetBlock {

  private static final double EDGE = 3;
  private static final double ABOVE = 4;
  private static final double MOST_WIDE = 45;
  private static final double MOST_HIGH = 60;

  /**
   * Of the width of an upright, how much is shown beside it and behind the slat: one in so many.
   */
  private static final int SHARE_BESIDE = 2;

  private final ShelfUnit unit;
  private final String id;
  private final String title;
  private final Scale scale;
  private final List<Piece> slats;
  private final List<Fastener> fasteners;
  private final Shown across;
  private final Shown up;
  private final ChainPair widths;
  private final ChainPair depths;

  /**
   * On a frame of a shelf.
   *
   * @param index of the frame, from the left
   */
  BearingDrawing(ShelfUnit unit, int index, String title, LengthFormat lengths, Scale scale) {
    ShelfUnit.Frame frame = unit.frames().get(index);
    this.unit = unit;
    this.id = "bearing-" + (index + 1);
    this.title = title;
    this.scale = scale;
    this.slats =
        unit.rows().stream()
            .map(row -> row.get(0))
            .filter(slat -> ShelfUnit.bears(frame.rail(), slat))
            .toList();
    this.fasteners =
        unit.fasteners().stream()
            .filter(each -> each.into().equals(frame.rail()) && slats.contains(each.through()))
            .toList();
    Box extent = unit.assembly().extent();
    Box upright = frame.upright();
    Length beside = upright.size(Axis.X).dividedBy(SHARE_BESIDE);
    Box slat = slats.get(0).box();
    this.across =
        shown(
            extent,
            Axis.X,
            Length.min(upright.low().x().minus(beside), ends(frame).first()),
            Length.max(upright.high().x().plus(beside), ends(frame).last()));
    this.up = shown(extent, Axis.Y, extent.low().y(), slat.high().y().plus(beside));
    this.widths = ChainPair.across(Link.between(places(frame), this::x, lengths), lengths);
    this.depths = ChainPair.up(Link.between(depthPlaces(slat), this::y, lengths), lengths);
  }

  private static Shown shown(Box extent, Axis axis, Length from, Length to) {
    return Shown.of(
        extent.low().along(axis).nanometres(),
        extent.high().along(axis).nanometres(),
        List.of(new Span(from.nanometres(), to.nanometres())));
  }

  /** The sides of the frame, and ends of slats that lie on it or stand out beyond it. */
  private TreeSet<Length> ends(ShelfUnit.Frame frame) {
    Box upright = frame.upright();
    TreeSet<Length> ends = new TreeSet<>(List.of(upright.low().x(), upright.high().x()));
    Box extent = unit.assembly().extent();
    for (Piece slat : slats) {
      for (Length end : List.of(slat.box().low().x(), slat.box().high().x())) {
        boolean on = !end.isLessThan(upright.low().x()) && !end.isMoreThan(upright.high().x());
        boolean beyond =
            end.equals(extent.low().x()) && frame.equals(unit.frames().get(0))
                || end.equals(extent.high().x())
                    && frame.equals(unit.frames().get(unit.frames().size() - 1));
        if (on || beyond) {
          ends.add(end);
        }
      }
    }
    return ends;
  }

  private TreeSet<Length> places(ShelfUnit.Frame frame) {
    TreeSet<Length> places = ends(frame);
    fasteners.forEach(each -> places.add(each.head().x()));
    return places;
  }

  /** Across the front slat. */
  private TreeSet<Length> depthPlaces(Box slat) {
    TreeSet<Length> places = new TreeSet<>(List.of(slat.low().y(), slat.high().y()));
    fasteners.stream()
        .filter(each -> each.through().equals(slats.get(0)))
        .forEach(each -> places.add(each.head().y()));
    return places;
  }

  private double x(Length place) {
    return across.place(place.nanometres(), scale.factor());
  }

  private double y(Length place) {
    return up.place(place.nanometres(), scale.factor());
  }

  @Override
  public double width() {
    double drawn = left() + across.size(scale.factor()) + widths.after() + EDGE;
    return Math.max(drawn, caption().width() + 2 * EDGE);
  }

  @Override
  public double height() {
    return below() + up.size(scale.factor()) + ABOVE + Caption.HEIGHT;
  }

  /** Whether several of them have room beside each other. */
  boolean isSmall() {
    return across.size(scale.factor()) <= MOST_WIDE && up.size(scale.factor()) <= MOST_HIGH;
  }

  private double left() {
    return EDGE + Math.max(depths.depth(), widths.before());
  }

  private double below() {
    return EDGE + widths.depth();
  }

  private Caption caption() {
    return new Caption(title + ", scale " + scale, "front slat");
  }

  @Override
  public View view(double atLeft, double atBottom) {
    RackView view =
        new RackView(
            unit.assembly(),
            Projection.TOP,
            scale,
            id,
            across,
            up,
            atLeft + left(),
            atBottom + below());
    List<Figure> figures = new ArrayList<>(view.figures());
    figures.addAll(view.breaks());
    fasteners.forEach(each -> figures.addAll(Crosses.at(each, view, Crosses.LARGE)));
    figures.addAll(widths.figures(view.left(), view.bottom(), -1));
    figures.addAll(depths.figures(view.bottom(), view.left(), -1));
    figures.addAll(caption().figures(atLeft + EDGE, atBottom + height()));
    return new View(id, title + " from above", Optional.of(scale), figures);
  }
}
