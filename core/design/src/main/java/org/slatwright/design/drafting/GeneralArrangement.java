package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.design.sizing.Rack;

/**
 * The general arrangement: front, side and top view with their dimension chains, notes, parts list
 * and title block on one sheet, upright or lying, whichever lets the views be larger.
 */
final class GeneralArrangement {

  static final String NAME = "drawings/01-general-arrangement";
  static final String TITLE = "General arrangement";

  private static final double BETWEEN = 16;
  private static final double EDGE = 4;
  private static final double VIEW_TITLE = 3.5;
  private static final double ABOVE = 10;
  private static final double BELOW_TOP_VIEW = 4;

  private final Rack rack;
  private final Assembly assembly;
  private final Box extent;
  private final LengthFormat lengths;
  private final Angle angle;

  GeneralArrangement(Rack rack, Assembly assembly) {
    this.rack = rack;
    this.assembly = assembly;
    this.extent = assembly.extent();
    this.lengths = new LengthFormat(rack.units());
    this.angle = Angle.of(rack.units());
  }

  /** The sheet, as number {@code number} of {@code count}. */
  Sheet sheet(int number, int count) {
    SheetFrame upright = new SheetFrame(rack.paper(), false);
    SheetFrame lying = new SheetFrame(rack.paper(), true);
    boolean landscape = scale(lying).factor() > scale(upright).factor();
    SheetFrame frame = landscape ? lying : upright;
    Scale scale = scale(frame);
    List<View> views = new ArrayList<>();
    views.add(frame.view());
    views.addAll(views(frame, scale));
    views.addAll(foot(frame).views(TitleBlock.of(rack, TITLE, scale, number, count)));
    return new Sheet(NAME, TITLE, rack.paper(), landscape, views);
  }

  private SheetFoot foot(SheetFrame frame) {
    return new SheetFoot(
        frame,
        room -> PartsList.table(assembly, lengths, room),
        room -> new Notes(rack, lengths, room));
  }

  private Scale scale(SheetFrame frame) {
    double room = foot(frame).roomAbove();
    return Scales.largest(
        rack.units(), scale -> neededWidth(scale) <= frame.width() && neededHeight(scale) <= room);
  }

  private double neededWidth(Scale scale) {
    return roomLeft(scale)
        + size(Axis.X, scale)
        + between(scale)
        + size(Axis.Y, scale)
        + roomRight(scale);
  }

  private double neededHeight(Scale scale) {
    return ABOVE
        + size(Axis.Z, scale)
        + roomBelow(scale)
        + ABOVE
        + size(Axis.Y, scale)
        + BELOW_TOP_VIEW;
  }

  private double roomLeft(Scale scale) {
    RackDimensions dimensions = dimensions(scale);
    return Math.max(dimensions.heights().depth(), dimensions.widths().before()) + EDGE;
  }

  /** Between the front and the side view, whose chains reach towards each other. */
  private double between(Scale scale) {
    RackDimensions dimensions = dimensions(scale);
    double numbers = dimensions.widths().after() + dimensions.depths().before() + EDGE;
    return Math.max(BETWEEN, numbers);
  }

  private double roomRight(Scale scale) {
    return dimensions(scale).depths().after() + EDGE;
  }

  private double roomBelow(Scale scale) {
    RackDimensions dimensions = dimensions(scale);
    return Math.max(dimensions.widths().depth(), dimensions.depths().depth());
  }

  private RackDimensions dimensions(Scale scale) {
    return new RackDimensions(rack, lengths, scale);
  }

  private double size(Axis axis, Scale scale) {
    return extent.size(axis).inMm() * scale.factor();
  }

  private List<View> views(SheetFrame frame, Scale scale) {
    SheetFoot foot = foot(frame);
    double left = frame.left() + roomLeft(scale) + (frame.width() - neededWidth(scale)) / 2;
    double lowest = foot.top() + (foot.roomAbove() - neededHeight(scale)) / 2;
    boolean topViewBelow = angle == Angle.FIRST;
    double frontBottom =
        lowest
            + roomBelow(scale)
            + (topViewBelow ? BELOW_TOP_VIEW + size(Axis.Y, scale) + ABOVE : 0);
    double topBottom =
        topViewBelow
            ? lowest + BELOW_TOP_VIEW
            : frontBottom + size(Axis.Z, scale) + ABOVE + BELOW_TOP_VIEW;
    RackDimensions dimensions = dimensions(scale);
    RackView front = new RackView(assembly, Projection.FRONT, scale, left, frontBottom);
    RackView side =
        new RackView(assembly, angle.side(), scale, front.right() + between(scale), frontBottom);
    RackView top = new RackView(assembly, Projection.TOP, scale, left, topBottom);
    return List.of(
        view(
            "front",
            front,
            dimensions.heights().figures(front.bottom(), front.left(), -1),
            dimensions.widths().figures(front.left(), front.bottom(), -1)),
        view(
            "side",
            side,
            dimensions.depths().figures(side.left(), side.bottom(), -1),
            Balloons.on(side, rack)),
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
