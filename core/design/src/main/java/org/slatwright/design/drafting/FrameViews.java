package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.drafting.DimensionChain.Link;

/**
 * One frame, or part of it, from its front edge and from its side, with every height: centres of
 * dowels at the left, edges of rails at the right, both counted from the floor, and the chain of
 * rails and openings between the views.
 */
final class FrameViews {

  private static final double EDGE = 3;
  private static final double VIEW_TITLE = 3.5;
  private static final double ABOVE = 9;
  private static final double LEADER = 5;
  private static final double GAP = 0.8;

  private final Assembly frame;
  private final LengthFormat lengths;
  private final FrameHeights heights;
  private final Shown shown;
  private final Scale scale;
  private final Projection side;
  private final RunningDimensions centres;
  private final RunningDimensions edges;
  private final ChainPair chain;
  private final ChainPair width;
  private final ChainPair depth;

  /**
   * Of one frame.
   *
   * @param shown which heights
   */
  FrameViews(Assembly frame, LengthFormat lengths, FrameHeights heights, Shown shown, Scale scale) {
    this.frame = frame;
    this.lengths = lengths;
    this.heights = heights;
    this.shown = shown;
    this.scale = scale;
    this.side = Angle.of(lengths.unit()).side();
    this.centres = RunningDimensions.of(heights.centres(), shown, scale, lengths);
    this.edges = RunningDimensions.of(heights.edges(), shown, scale, lengths);
    this.chain = chain();
    this.width = across(Projection.FRONT);
    this.depth = across(side);
  }

  private ChainPair chain() {
    List<Length> places =
        heights.edges().stream().filter(edge -> shown.shows(edge.nanometres())).toList();
    List<Link> links =
        Link.between(places, place -> shown.place(place.nanometres(), scale.factor()), lengths);
    boolean whole = places.size() == heights.edges().size();
    return whole ? ChainPair.up(links, lengths) : ChainPair.upAlone(links);
  }

  /** Of the uprights and what lies between them. */
  private ChainPair across(Projection projection) {
    Collection<Length> places = new TreeSet<>();
    for (Piece upright : frame.pieces(Role.UPRIGHT)) {
      Projection.Rect cover = projection.cover(upright.box());
      places.add(new Length(cover.left()));
      places.add(new Length(cover.right()));
    }
    long start = projection.cover(frame.extent()).left();
    return ChainPair.across(
        Link.between(
            places,
            place -> new Length(place.nanometres() - start).inMm() * scale.factor(),
            lengths),
        lengths);
  }

  /** Whether all numbers stand where they belong, and in two columns at most. */
  boolean isEasyToRead() {
    return centres.isRoomy() && edges.isRoomy() && chain.isEasyToRead();
  }

  /** In mm on paper, dimensions and titles included. */
  double width() {
    return toFront() + onPaper(Axis.X) + between() + onPaper(Axis.Y) + edges.depth() + EDGE;
  }

  /** In mm on paper, dimensions and titles included. */
  double height() {
    double after = Math.max(centres.after(high()), edges.after(high()));
    return below() + high() + Math.max(after, ABOVE);
  }

  private double toFront() {
    return EDGE + Math.max(centres.depth(), width.before());
  }

  private double between() {
    double note = LEADER + GAP + Lettering.width(holes(), DimensionChain.LETTERING) + EDGE;
    return Math.max(Math.max(note, width.after()) + chain.depth(), depth.before()) + EDGE;
  }

  private double below() {
    double before = Math.max(centres.before(), edges.before());
    return Math.max(before, Math.max(width.depth(), depth.depth())) + EDGE;
  }

  private double high() {
    return shown.size(scale.factor());
  }

  private double onPaper(Axis axis) {
    return frame.extent().size(axis).inMm() * scale.factor();
  }

  private String holes() {
    Length diameter = frame.joints().get(0).pins().get(0).uprightHole().diameter();
    return heights.dowels().size() + " × ø " + lengths.number(diameter);
  }

  /** Drawn with the lower left corner of their room there. */
  List<View> views(double left, double bottom) {
    RackView front = view(Projection.FRONT, "front-edge", left + toFront(), bottom + below());
    RackView aside = view(side, "side", front.right() + between(), bottom + below());
    List<Figure> atFront = new ArrayList<>(figures(front, "Front"));
    atFront.addAll(centres.figures(RunningDimensions.Side.LEFT, front.bottom(), front.left()));
    atFront.addAll(width.figures(front.left(), front.bottom(), -1));
    atFront.addAll(holeNote(front));
    List<Figure> atSide = new ArrayList<>(figures(aside, side.title()));
    atSide.addAll(edges.figures(RunningDimensions.Side.RIGHT, aside.bottom(), aside.right()));
    atSide.addAll(chain.figures(aside.bottom(), aside.left(), -1));
    atSide.addAll(depth.figures(aside.left(), aside.bottom(), -1));
    return List.of(
        new View("front-edge", "Front edge of a frame", Optional.of(scale), atFront),
        new View("side", "Side of a frame", Optional.of(scale), atSide));
  }

  private RackView view(Projection projection, String id, double left, double bottom) {
    Projection.Rect extent = projection.cover(frame.extent());
    return new RackView(
        frame,
        projection,
        scale,
        id,
        Shown.all(extent.left(), extent.right()),
        shown,
        left,
        bottom);
  }

  private static List<Figure> figures(RackView view, String title) {
    List<Figure> figures = new ArrayList<>(view.figures());
    figures.addAll(view.breaks());
    figures.add(
        Paragraph.text(
            view.left() + view.width() / 2,
            view.top() + VIEW_TITLE,
            VIEW_TITLE,
            title,
            Figure.Align.MIDDLE));
    return figures;
  }

  /** How many holes there are and how wide, with an arrow on the highest that is shown. */
  private List<Figure> holeNote(RackView front) {
    Length highest =
        heights.dowels().stream()
            .filter(dowel -> shown.shows(dowel.nanometres()))
            .reduce((lower, higher) -> higher)
            .orElseThrow();
    Length diameter = frame.joints().get(0).pins().get(0).uprightHole().diameter();
    double y = front.y(highest.nanometres());
    double radius = diameter.inMm() * scale.factor() / 2;
    double hole = front.left() + front.width() / 2 + radius;
    double text = front.right() + LEADER + GAP;
    List<Figure> figures = new ArrayList<>(Leaders.arrowed(text - GAP, y, hole));
    figures.add(
        Paragraph.text(
            text,
            y - DimensionChain.LETTERING / 2,
            DimensionChain.LETTERING,
            holes(),
            Figure.Align.START));
    return figures;
  }
}
