package org.slatwright.design.drafting;

import static org.slatwright.design.drafting.RackDimensions.ROOM_BELOW;
import static org.slatwright.design.drafting.RackDimensions.ROOM_LEFT;

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

  private static final double BETWEEN = 20;
  private static final double RIGHT_PAD = 12;
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
    return ROOM_LEFT + size(Axis.X, scale) + BETWEEN + size(Axis.Y, scale) + RIGHT_PAD;
  }

  private double neededHeight(Scale scale) {
    return ABOVE + size(Axis.Z, scale) + ROOM_BELOW + ABOVE + size(Axis.Y, scale) + BELOW_TOP_VIEW;
  }

  private double size(Axis axis, Scale scale) {
    return extent.size(axis).inMm() * scale.factor();
  }

  private List<View> views(SheetFrame frame, Scale scale) {
    SheetFoot foot = foot(frame);
    double left = frame.left() + ROOM_LEFT + (frame.width() - neededWidth(scale)) / 2;
    double lowest = foot.top() + (foot.roomAbove() - neededHeight(scale)) / 2;
    boolean topViewBelow = angle == Angle.FIRST;
    double frontBottom =
        lowest + ROOM_BELOW + (topViewBelow ? BELOW_TOP_VIEW + size(Axis.Y, scale) + ABOVE : 0);
    double topBottom =
        topViewBelow
            ? lowest + BELOW_TOP_VIEW
            : frontBottom + size(Axis.Z, scale) + ABOVE + BELOW_TOP_VIEW;
    RackDimensions dimensions = new RackDimensions(rack, lengths);
    RackView front = new RackView(assembly, Projection.FRONT, scale, left, frontBottom);
    RackView side =
        new RackView(assembly, angle.side(), scale, front.right() + BETWEEN, frontBottom);
    RackView top = new RackView(assembly, Projection.TOP, scale, left, topBottom);
    return List.of(
        view("front", front, dimensions.heights(front), dimensions.widths(front)),
        view("side", side, dimensions.depths(side), Balloons.on(side, rack)),
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
