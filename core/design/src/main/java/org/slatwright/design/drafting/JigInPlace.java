package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Jig;
import org.slatwright.design.sizing.Rack;

/**
 * The jig as it sits on an upright, seen along the frame: the guide stack on the outer face, a
 * cheek beside the stock, the register on the rail, and the hole that is drilled. The rack itself
 * is drawn as a neighbouring part.
 */
final class JigInPlace implements SheetBlock {

  private static final double CAPTION = 3.5;
  private static final double LETTERING = 2.5;
  private static final double BALLOON = 2.8;
  private static final double STOCK_BEYOND = 12;
  private static final double AXIS_BEYOND = 4;
  private static final double ABOVE = 17;
  private static final double LEFT = 12;
  private static final double RIGHT = 16;
  private static final double CHAIN = 8;
  private static final String UPRIGHT = "upright";

  /** How far above the jig the upright is named. */
  private static final double NAME = 5.5;

  /** The middle of the rail's label from where it is cut off: beyond the axis of the hole. */
  private static final double RAIL_LABEL = 5.3;

  private final Rack rack;
  private final Jig jig;
  private final LengthFormat lengths;
  private final Scale scale;
  private final Box extent;
  private final AcrossChain drilled;

  JigInPlace(Rack rack, Jig jig, LengthFormat lengths, Scale scale) {
    this.rack = rack;
    this.jig = jig;
    this.lengths = lengths;
    this.scale = scale;
    this.extent = jig.placed().stream().map(Jig.Placed::box).reduce(Box::around).orElseThrow();
    this.drilled = new AcrossChain(drilled());
  }

  @Override
  public double width() {
    return LEFT + onPaper(end().minus(extent.low().y())) + STOCK_BEYOND + RIGHT;
  }

  @Override
  public double height() {
    return ABOVE + onPaper(top().minus(bottom())) + below();
  }

  /** Of jig and hole, whichever reaches farther along the rail. */
  private Length end() {
    Length hole = rack.upright().depth().plus(rack.joint().holeDepth());
    return Length.max(extent.high().y(), hole);
  }

  /** The stock is shown a little beyond the jig, and the rail whole. */
  private Length top() {
    return extent.high().z();
  }

  private Length bottom() {
    return Length.min(extent.low().z(), rack.rail().height().negated());
  }

  @Override
  public View view(double left, double bottom) {
    Sketch sketch = new Sketch(left + LEFT, bottom + below());
    List<Figure> figures = new ArrayList<>();
    figures.addAll(sketch.stock());
    figures.addAll(sketch.holes());
    figures.addAll(sketch.plates());
    figures.addAll(sketch.dimensions());
    figures.addAll(sketch.balloons());
    figures.add(
        Paragraph.text(
            left, bottom + CAPTION / 2, CAPTION, "In place, from the side", Figure.Align.START));
    return new View("in-place", "The jig in place", Optional.of(scale), figures);
  }

  /** Under the stock: the chain, and the caption clear of it. */
  private double below() {
    return CHAIN + drilled.depth() + 2 * CAPTION;
  }

  /** Guide, upright and hole in the rail. */
  private List<DimensionChain.Link> drilled() {
    Length guide = jig.guideDepth();
    Length upright = guide.plus(rack.upright().depth());
    Length end = upright.plus(rack.joint().holeDepth());
    return List.of(link(Length.ZERO, guide), link(guide, upright), link(upright, end));
  }

  private DimensionChain.Link link(Length from, Length to) {
    Length value = to.minus(from);
    return new DimensionChain.Link(onPaper(from), onPaper(to), value, lengths.number(value));
  }

  private double onPaper(Length length) {
    return length.inMm() * scale.factor();
  }

  /** The drawing at one place on the sheet. */
  private final class Sketch {

    private final double left;
    private final double foot;

    Sketch(double left, double foot) {
      this.left = left;
      this.foot = foot;
    }

    private double x(Length y) {
      return left + onPaper(y.minus(extent.low().y()));
    }

    private double y(Length z) {
      return foot + onPaper(z.minus(bottom()));
    }

    /** Upright and rail, cut off where they leave the picture. */
    List<Figure> stock() {
      Length depth = rack.upright().depth();
      double outer = x(Length.ZERO);
      double inner = x(depth);
      double end = x(end()) + STOCK_BEYOND;
      double low = y(bottom()) - 4;
      double high = y(top()) + NAME - 1.5;
      return List.of(
          Strokes.line(outer, low, outer, high, LineKind.NEIGHBOUR),
          Strokes.line(inner, low, inner, high, LineKind.NEIGHBOUR),
          Strokes.line(inner, y(Length.ZERO), end, y(Length.ZERO), LineKind.NEIGHBOUR),
          Strokes.line(
              inner,
              y(rack.rail().height().negated()),
              end,
              y(rack.rail().height().negated()),
              LineKind.NEIGHBOUR),
          label((outer + inner) / 2, y(top()) + NAME, UPRIGHT),
          label(
              end - RAIL_LABEL, y(rack.rail().height().half().negated()) - LETTERING / 2, "rail"));
    }

    List<Figure> holes() {
      List<Figure> figures = new ArrayList<>();
      double end = x(rack.upright().depth().plus(rack.joint().holeDepth()));
      double half = onPaper(rack.joint().diameter().half());
      double start = x(extent.low().y());
      for (Length hole : jig.railEdgeToHoles()) {
        double axis = y(hole.negated());
        figures.add(Strokes.line(start, axis + half, end, axis + half, LineKind.HIDDEN));
        figures.add(Strokes.line(start, axis - half, end, axis - half, LineKind.HIDDEN));
        figures.add(Strokes.line(end, axis - half, end, axis + half, LineKind.HIDDEN));
        figures.add(
            Strokes.line(start - AXIS_BEYOND, axis, end + AXIS_BEYOND, axis, LineKind.CENTRE));
      }
      return figures;
    }

    /** Plates on edge, and the cheek over them or, where the stack hides its tabs, beyond it. */
    List<Figure> plates() {
      Jig.Placed cheek = first(Axis.X);
      boolean outside = cheek.box().low().x().isLessThan(first(Axis.Y).box().low().x());
      return outside ? behind(cheek) : beside(cheek);
    }

    /** The cheek hides the guide; the register stands out from it. */
    private List<Figure> behind(Jig.Placed cheek) {
      List<Figure> figures = new ArrayList<>();
      jig.placed().stream()
          .filter(plate -> normal(plate) == Axis.Y)
          .forEach(plate -> figures.add(rectangle(plate.box(), LineKind.HIDDEN)));
      figures.add(rectangle(cheek.box(), LineKind.VISIBLE));
      Box pin = first(Axis.Z).box();
      double radius = onPaper(pin.size(Axis.Z).half());
      PaperPoint middle = new PaperPoint(x(pin.low().y()) + radius, y(pin.low().z()) + radius);
      figures.add(new Figure.Circle(middle, radius, LineKind.VISIBLE));
      return figures;
    }

    private List<Figure> beside(Jig.Placed cheek) {
      List<Figure> figures = new ArrayList<>();
      jig.placed().stream()
          .filter(plate -> normal(plate) != Axis.X)
          .forEach(plate -> figures.add(rectangle(plate.box(), LineKind.VISIBLE)));
      Length toFace = cheek.box().low().y();
      OutlineView view = new OutlineView(scale, x(toFace), y(cheek.box().low().z()));
      for (Outline.Edge edge : cheek.plate().boundary().edges()) {
        Length nearest = Length.min(edge.from().x(), edge.to().x()).plus(toFace);
        if (!nearest.isNegative()) {
          figures.add(view.edge(edge));
        }
      }
      return figures;
    }

    /** From the rail edge to the hole; guide, upright and hole in the rail. */
    List<Figure> dimensions() {
      double end = x(end()) + STOCK_BEYOND;
      Length nearest = jig.railEdgeToHoles().stream().min(Length::compareTo).orElseThrow();
      List<Figure> figures =
          new ArrayList<>(
              new UpChain(List.of(link(Length.ZERO, nearest)))
                  .figures(y(nearest.negated()), end + 4, end));
      figures.addAll(
          drilled.figures(x(jig.guideDepth().negated()), y(bottom()) - CHAIN, y(extent.low().z())));
      return figures;
    }

    /** The marks of guide stack, cheek and register above them, clear of the upright's name. */
    List<Figure> balloons() {
      Jig.Placed cheek = first(Axis.X);
      Jig.Placed guide = first(Axis.Y);
      Jig.Placed register = first(Axis.Z);
      double name = x(rack.upright().depth().half());
      double half = Lettering.width(UPRIGHT, LETTERING) / 2 + 1;
      double onGuide = Math.min(middle(guide), name - half);
      double besideUpright = Math.max(x(rack.upright().depth()) + BALLOON + 1, name + half);
      double onRegister = Math.max(middle(register), besideUpright + 2 * BALLOON + 2);
      List<Figure> figures = new ArrayList<>();
      balloon(figures, guide, onGuide, at(middle(guide), y(top()) - 1.5));
      balloon(figures, cheek, besideUpright, at(onCheek(cheek), topOf(cheek) - 1.5));
      balloon(figures, register, onRegister, at(middle(register), topOf(register) - 1));
      return figures;
    }

    private double middle(Jig.Placed plate) {
      return (x(plate.box().low().y()) + x(plate.box().high().y())) / 2;
    }

    /** Beside the upright, and on the cheek even where its balloon is not above it. */
    private double onCheek(Jig.Placed cheek) {
      double end = x(cheek.box().high().y());
      return Math.min(x(rack.upright().depth()) + BALLOON + 1, end - 1);
    }

    private double topOf(Jig.Placed plate) {
      return y(plate.box().high().z());
    }

    private static PaperPoint at(double x, double y) {
      return new PaperPoint(x, y);
    }

    /** The leader bends below the upright's name, where it has to. */
    private void balloon(List<Figure> figures, Jig.Placed plate, double x, PaperPoint end) {
      double y = y(top()) + BALLOON + 9.5;
      PaperPoint bend = new PaperPoint(x, y(top()) + NAME / 2);
      figures.add(new Figure.Circle(new PaperPoint(x, y), BALLOON, LineKind.THIN));
      figures.add(label(x, y - LETTERING / 2, plate.plate().mark()));
      figures.addAll(Leaders.dotted(List.of(new PaperPoint(x, y - BALLOON), bend, end)));
    }

    private Figure rectangle(Box box, LineKind line) {
      return Strokes.box(
          x(box.low().y()), y(box.low().z()), x(box.high().y()), y(box.high().z()), line);
    }

    private Figure label(double x, double y, String text) {
      return Paragraph.text(x, y, LETTERING, text, Figure.Align.MIDDLE);
    }
  }

  /** The first plate that lies square to an axis: the register to z, the guide to y. */
  private Jig.Placed first(Axis square) {
    return jig.placed().stream().filter(plate -> normal(plate) == square).findFirst().orElseThrow();
  }

  private static Axis normal(Jig.Placed plate) {
    return plate.placement().thickness().axis();
  }
}
