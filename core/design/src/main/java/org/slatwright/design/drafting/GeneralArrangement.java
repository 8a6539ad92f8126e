package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Axis;
import org.slatwright.design.drafting.DimensionChain.Link;
import org.slatwright.design.sizing.Rack;

/**
 * The general arrangement: front, side and top view with their dimension chains, notes, parts list
 * and title block on one sheet, upright or lying, whichever lets the views be larger.
 */
final class GeneralArrangement {

  static final String NAME = "drawings/01-general-arrangement";
  static final String TITLE = "General arrangement";

  private static final double FIRST_CHAIN = 10;
  private static final double NEXT_CHAIN = 8;
  private static final double LEFT_PAD = FIRST_CHAIN + NEXT_CHAIN + 6;
  private static final double BETWEEN = 18;
  private static final double RIGHT_PAD = 10;
  private static final double TOP_PAD = 8;
  private static final double VIEW_TITLE = 3.5;
  private static final double BELOW = FIRST_CHAIN + NEXT_CHAIN + 9;
  private static final double BELOW_TOP_VIEW = 9;
  private static final double STRIP_GAP = 4;

  private final Rack rack;
  private final Assembly assembly;
  private final LengthFormat lengths;
  private final Angle angle;

  GeneralArrangement(Rack rack, Assembly assembly) {
    this.rack = rack;
    this.assembly = assembly;
    this.lengths = new LengthFormat(rack.units());
    this.angle = Angle.of(rack.units());
  }

  /** The sheet, as number {@code number} of {@code count}. */
  Sheet sheet(int number, int count) {
    SheetFrame upright = new SheetFrame(rack.paper(), false);
    SheetFrame lying = new SheetFrame(rack.paper(), true);
    Scale uprightScale = scale(upright);
    Scale lyingScale = scale(lying);
    boolean landscape = lyingScale.factor() > uprightScale.factor();
    return landscape
        ? sheet(lying, lyingScale, number, count)
        : sheet(upright, uprightScale, number, count);
  }

  private Sheet sheet(SheetFrame frame, Scale scale, int number, int count) {
    Strip strip = new Strip(frame);
    List<View> views = new ArrayList<>();
    views.add(new View("frame", "Sheet frame", Optional.empty(), frame.figures()));
    views.addAll(views(frame, strip, scale));
    views.add(new View("parts-list", "Parts list", Optional.empty(), strip.partsList()));
    TitleBlock block =
        new TitleBlock(
            rack.title(),
            TITLE,
            scale.toString(),
            Units.words(rack.units()),
            rack.paper().word(),
            number + " of " + count,
            angle);
    views.add(
        new View(
            "title-block",
            "Title block",
            Optional.empty(),
            block.figures(frame.right() - TitleBlock.WIDTH, frame.bottom())));
    return new Sheet(NAME, TITLE, rack.paper(), frame.landscape(), views);
  }

  private Scale scale(SheetFrame frame) {
    Strip strip = new Strip(frame);
    return Scales.largest(
        rack.units(),
        scale -> neededWidth(scale) <= frame.width() && neededHeight(scale) <= strip.roomAbove());
  }

  private double neededWidth(Scale scale) {
    return LEFT_PAD + size(Axis.X, scale) + BETWEEN + size(Axis.Y, scale) + RIGHT_PAD;
  }

  private double neededHeight(Scale scale) {
    return TOP_PAD + size(Axis.Z, scale) + BELOW + besideHeight(scale) + BELOW_TOP_VIEW;
  }

  /** The row that holds the top view and, in the corner beside it, the notes. */
  private double besideHeight(Scale scale) {
    double notes = new Notes(rack, lengths, notesWidth(scale)).height();
    return Math.max(size(Axis.Y, scale), notes);
  }

  private double notesWidth(Scale scale) {
    return BETWEEN - NOTES_GAP + size(Axis.Y, scale) + RIGHT_PAD;
  }

  private static final double NOTES_GAP = 8;

  private double size(Axis axis, Scale scale) {
    return assembly.extent().size(axis).inMm() * scale.factor();
  }

  private List<View> views(SheetFrame frame, Strip strip, Scale scale) {
    double spareX = frame.width() - neededWidth(scale);
    double spareY = strip.roomAbove() - neededHeight(scale);
    double frontLeft = frame.left() + LEFT_PAD + spareX / 2;
    double lowest = strip.top() + spareY / 2;
    double beside = besideHeight(scale);
    boolean topViewBelow = angle == Angle.FIRST;
    double frontBottom = lowest + BELOW + (topViewBelow ? beside + BELOW_TOP_VIEW : 0);
    double topBottom =
        topViewBelow
            ? lowest + BELOW_TOP_VIEW + beside - size(Axis.Y, scale)
            : frontBottom + size(Axis.Z, scale) + BELOW_TOP_VIEW + TOP_PAD / 2;
    RackView front = new RackView(assembly, Projection.FRONT, scale, frontLeft, frontBottom);
    RackView side =
        new RackView(assembly, angle.side(), scale, front.right() + BETWEEN, frontBottom);
    RackView top = new RackView(assembly, Projection.TOP, scale, frontLeft, topBottom);
    double notesTop = topViewBelow ? top.top() : topBottom + beside;
    Notes notes = new Notes(rack, lengths, notesWidth(scale));
    return List.of(
        view("front", front, Stream.concat(heights(front), widths(front)).toList(), BELOW),
        view("side", side, depths(side).toList(), BELOW),
        view("top", top, List.of(), BELOW_TOP_VIEW),
        new View(
            "notes",
            "Notes",
            Optional.empty(),
            notes.figures(front.right() + NOTES_GAP, notesTop)));
  }

  private View view(String id, RackView view, List<Figure> dimensions, double below) {
    List<Figure> figures = new ArrayList<>(view.figures());
    figures.addAll(dimensions);
    figures.add(
        Paragraph.text(
            view.left() + view.width() / 2,
            view.bottom() - below + 2.5,
            VIEW_TITLE,
            view.projection().title(),
            Figure.Align.MIDDLE));
    return new View(id, view.projection().title() + " view", Optional.of(view.scale()), figures);
  }

  private Stream<Figure> heights(RackView view) {
    List<Link> links = new ArrayList<>();
    Length at = Length.ZERO;
    for (Heights.Step step : Heights.of(rack, lengths)) {
      Length end = at.plus(step.length());
      links.add(
          new Link(view.y(at.nanometres()), view.y(end.nanometres()), step.length(), step.text()));
      at = end;
    }
    double edge = view.left();
    return Stream.concat(
        DimensionChain.up(edge - FIRST_CHAIN, edge, links).stream(),
        overall(links, at)
            .flatMap(
                link ->
                    DimensionChain.up(
                        edge - FIRST_CHAIN - NEXT_CHAIN, edge - FIRST_CHAIN, List.of(link))
                        .stream()));
  }

  private Stream<Figure> widths(RackView view) {
    List<Length> steps = new ArrayList<>();
    steps.add(rack.slats().overhang());
    for (int frame = 0; frame < rack.frames(); frame++) {
      if (frame > 0) {
        steps.add(rack.interiorWidth());
      }
      steps.add(rack.upright().width());
    }
    steps.add(rack.slats().overhang());
    return across(view, steps);
  }

  private Stream<Figure> depths(RackView view) {
    Length upright = rack.upright().depth();
    return across(view, List.of(upright, rack.rail().length(), upright));
  }

  private Stream<Figure> across(RackView view, List<Length> steps) {
    List<Link> links = new ArrayList<>();
    double start = view.left();
    Length at = Length.ZERO;
    for (Length step : steps.stream().filter(Length::isPositive).toList()) {
      Length end = at.plus(step);
      double factor = view.scale().factor();
      links.add(
          new Link(
              start + at.inMm() * factor, start + end.inMm() * factor, step, lengths.number(step)));
      at = end;
    }
    double edge = view.bottom();
    return Stream.concat(
        DimensionChain.across(edge - FIRST_CHAIN, edge, links).stream(),
        overall(links, at)
            .flatMap(
                link ->
                    DimensionChain.across(
                        edge - FIRST_CHAIN - NEXT_CHAIN, edge - FIRST_CHAIN, List.of(link))
                        .stream()));
  }

  /** The link over all others, unless there is only one. */
  private Stream<Link> overall(List<Link> links, Length total) {
    if (links.size() < 2) {
      return Stream.empty();
    }
    return Stream.of(
        new Link(
            links.get(0).from(), links.get(links.size() - 1).to(), total, lengths.number(total)));
  }

  /** The strip along the foot of the sheet: title block at the right, parts list where it fits. */
  private final class Strip {

    private static final double LEAST_BESIDE = 86;

    private final SheetFrame frame;
    private final Table table;
    private final boolean beside;

    Strip(SheetFrame frame) {
      this.frame = frame;
      double room = frame.width() - TitleBlock.WIDTH - STRIP_GAP;
      beside = room >= LEAST_BESIDE;
      table = PartsList.table(assembly, lengths, beside ? room : TitleBlock.WIDTH);
    }

    double top() {
      double high =
          beside ? Math.max(TitleBlock.HEIGHT, table.height()) : TitleBlock.HEIGHT + table.height();
      return frame.bottom() + high + STRIP_GAP;
    }

    double roomAbove() {
      return frame.top() - top();
    }

    List<Figure> partsList() {
      return beside
          ? table.figures(frame.left(), frame.bottom())
          : table.figures(frame.right() - TitleBlock.WIDTH, frame.bottom() + TitleBlock.HEIGHT);
    }
  }
}
