package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.design.sizing.Rack;

/** Front, side and top view of a rack at one scale, with their dimension chains around them. */
final class ThreeViews {

  private static final double BETWEEN = 16;
  private static final double EDGE = 4;
  private static final double VIEW_TITLE = 3.5;
  private static final double ABOVE = 10;
  private static final double BELOW_TOP_VIEW = 4;

  /** Least room at the side away from the pictorial view, where there is any to spare. */
  private static final double MOST_ASIDE = 8;

  private final Rack rack;
  private final Assembly assembly;
  private final Scale scale;
  private final Angle angle;
  private final double wide;
  private final double deep;
  private final double high;
  private final ChainPair heights;
  private final ChainPair widths;
  private final ChainPair depths;

  ThreeViews(Rack rack, Assembly assembly, Scale scale) {
    this.rack = rack;
    this.assembly = assembly;
    this.scale = scale;
    this.angle = Angle.of(rack.units());
    Box extent = assembly.extent();
    this.wide = extent.size(Axis.X).inMm() * scale.factor();
    this.deep = extent.size(Axis.Y).inMm() * scale.factor();
    this.high = extent.size(Axis.Z).inMm() * scale.factor();
    RackDimensions dimensions = new RackDimensions(rack, rack.lengths(), scale);
    this.heights = dimensions.heights();
    this.widths = dimensions.widths();
    this.depths = dimensions.depths();
  }

  /** In mm on paper, chains and titles included. */
  double width() {
    return left() + wide + between() + deep + depths.after() + EDGE;
  }

  /** In mm on paper, chains and titles included. */
  double height() {
    return ABOVE + high + below() + ABOVE + deep + BELOW_TOP_VIEW;
  }

  private double left() {
    return Math.max(heights.depth(), widths.before()) + EDGE;
  }

  /** Between the front and the side view, whose chains reach towards each other. */
  private double between() {
    return Math.max(BETWEEN, widths.after() + depths.before() + EDGE);
  }

  private double below() {
    return Math.max(widths.depth(), depths.depth());
  }

  /**
   * Drawn in that room, and in the corner that they leave free the rack as one sees it, where it is
   * large enough; the views then move away from there.
   */
  List<View> views(PaperBox room) {
    double left = room.left() + (room.width() - width()) / 2;
    double slack = room.height() - height();
    double aside = Math.max(0, Math.min(slack / 2, MOST_ASIDE));
    double moved = topViewBelow() ? slack - aside : aside;
    PaperBox corner = corner(room, left, room.bottom() + moved);
    if (corner.width() > 0 && corner.height() > 0) {
      Pictorial picture = new Pictorial(assembly, corner);
      if (picture.isClear()) {
        List<View> views = new ArrayList<>(views(left, room.bottom() + moved));
        views.add(picture.view());
        return views;
      }
    }
    return views(left, room.bottom() + slack / 2);
  }

  /** Beside the top view, and below or above the side view with its dimensions or its title. */
  private PaperBox corner(PaperBox room, double roomLeft, double roomBottom) {
    double left = roomLeft + left() + wide + BETWEEN / 2;
    double right = room.right() - EDGE;
    double front = frontBottom(roomBottom);
    return topViewBelow()
        ? new PaperBox(left, room.bottom() + EDGE, right, front - below() - EDGE)
        : new PaperBox(left, front + high + ABOVE, right, room.top() - EDGE);
  }

  private boolean topViewBelow() {
    return angle == Angle.FIRST;
  }

  private double frontBottom(double roomBottom) {
    return roomBottom + below() + (topViewBelow() ? BELOW_TOP_VIEW + deep + ABOVE : 0);
  }

  /** Drawn with the lower left corner of their room there. */
  private List<View> views(double roomLeft, double roomBottom) {
    double left = roomLeft + left();
    double frontBottom = frontBottom(roomBottom);
    double topBottom = BELOW_TOP_VIEW + (topViewBelow() ? roomBottom : frontBottom + high + ABOVE);
    RackView front = RackView.whole(assembly, Projection.FRONT, scale, left, frontBottom);
    RackView side =
        RackView.whole(assembly, angle.side(), scale, front.right() + between(), frontBottom);
    RackView top = RackView.whole(assembly, Projection.TOP, scale, left, topBottom);
    return List.of(
        view(
            "front",
            front,
            heights.figures(front.bottom(), front.left(), -1),
            widths.figures(front.left(), front.bottom(), -1)),
        view("side", side, depths.figures(side.left(), side.bottom(), -1), Balloons.on(side, rack)),
        view("top", top, List.of(), List.of()));
  }

  private static View view(String id, RackView view, List<Figure> dimensions, List<Figure> more) {
    List<Figure> figures = new ArrayList<>(view.figures());
    figures.addAll(dimensions);
    figures.addAll(more);
    figures.add(
        Paragraph.text(
            view.left() + view.width() / 2,
            view.top() + VIEW_TITLE,
            VIEW_TITLE,
            view.projection().title(),
            Figure.Align.MIDDLE));
    return new View(id, view.projection().title() + " view", Optional.of(view.scale()), figures);
  }
}
