package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Piece;
import org.slatwright.design.drafting.DimensionChain.Link;

/**
 * A joint cut across its rail and dowels, looking to the upright. What lies in front of the cut is
 * drawn as a neighbour (ISO 128-2, line 05.1).
 */
final class JointAcross implements SheetBlock {

  /** Beside the upright, for the slat and the word on the holes. */
  private static final double RUN = 20;

  private static final double EDGE = 3;
  private static final double LETTERING = 2.5;

  private final JointShown joint;
  private final LengthFormat lengths;
  private final Scale scale;
  private final Piece slat;
  private final ChainPair heights;
  private final ChainPair widths;
  private final DimensionChain fastener;

  JointAcross(JointShown joint, LengthFormat lengths, Scale scale) {
    this.joint = joint;
    this.lengths = lengths;
    this.scale = scale;
    this.slat = joint.slats().stream().filter(this::isCut).findFirst().orElse(joint.slats().get(0));
    Box rail = joint.rail();
    TreeSet<Length> up = new TreeSet<>(joint.axes());
    up.addAll(List.of(rail.low().z(), rail.high().z()));
    this.heights = ChainPair.up(links(List.copyOf(up)), lengths);
    TreeSet<Length> across =
        new TreeSet<>(
            List.of(
                joint.upright().low().x(),
                rail.low().x(),
                joint.axisX(),
                rail.high().x(),
                joint.upright().high().x()));
    this.widths = ChainPair.across(links(List.copyOf(across)), lengths);
    this.fastener = new AcrossChain(links(List.of(rail.low().x(), joint.fastener().head().x())));
  }

  private boolean isCut(Piece other) {
    Length from = joint.depth(other.box().high().y());
    Length to = joint.depth(other.box().low().y());
    return from.isLessThan(joint.across()) && joint.across().isLessThan(to);
  }

  private double onPaper(Length length) {
    return length.inMm() * scale.factor();
  }

  private List<Link> links(List<Length> stops) {
    List<Link> links = new ArrayList<>();
    for (int i = 1; i < stops.size(); i++) {
      Length value = stops.get(i).minus(stops.get(i - 1));
      double from = onPaper(stops.get(i - 1).minus(stops.get(0)));
      double to = onPaper(stops.get(i).minus(stops.get(0)));
      links.add(new Link(from, to, value, lengths.number(value)));
    }
    return links;
  }

  private Length leftmost() {
    return Length.min(joint.upright().low().x(), slat.box().low().x());
  }

  private double left() {
    return EDGE + Math.max(heights.depth(), widths.before());
  }

  @Override
  public double width() {
    double drawn = onPaper(joint.upright().high().x().minus(leftmost()));
    return left() + drawn + Math.max(RUN, widths.after()) + EDGE;
  }

  @Override
  public double height() {
    return EDGE + below() + new JointHeights(joint, scale, 0).height() + JointLengthwise.ABOVE;
  }

  private double below() {
    return widths.depth();
  }

  @Override
  public View view(double left, double bottom) {
    Sketch sketch =
        new Sketch(left + left(), new JointHeights(joint, scale, bottom + EDGE + below()));
    List<Figure> figures = new ArrayList<>();
    figures.addAll(sketch.upright());
    figures.addAll(sketch.rail());
    figures.addAll(sketch.dowels());
    figures.addAll(sketch.slat());
    figures.addAll(sketch.fasteners());
    figures.addAll(sketch.dimensions());
    double titleAt = bottom + height() - JointLengthwise.TITLE;
    figures.add(
        Paragraph.text(
            sketch.x(joint.axisX()), titleAt, JointLengthwise.TITLE, "A-A", Figure.Align.MIDDLE));
    return new View("joint-across", "A-A: cut across the rail", Optional.of(scale), figures);
  }

  /** The drawing at one place on the sheet. */
  private final class Sketch {

    private final double left;
    private final JointHeights heights;

    Sketch(double left, JointHeights heights) {
      this.left = left;
      this.heights = heights;
    }

    private double x(Length place) {
      return left + onPaper(place.minus(leftmost()));
    }

    /** Where the slat is cut off. */
    private double end() {
      return x(joint.upright().high().x()) + RUN;
    }

    /** Beyond the cut, where rail and slat leave it free. */
    List<Figure> upright() {
      List<Figure> figures = new ArrayList<>();
      double low = x(joint.upright().low().x());
      double high = x(joint.upright().high().x());
      boolean behind = x(joint.rail().low().x()) - low < 1e-6;
      double railFoot = heights.underside();
      double slatFoot = heights.railTop();
      double slatHead = isCut(slat) ? heights.y(slat.box().high().z()) : slatFoot;
      for (double x : new double[] {low, high}) {
        figures.add(
            Strokes.line(
                x, heights.uprightFoot(), x, behind ? railFoot : slatFoot, LineKind.VISIBLE));
        figures.add(Strokes.line(x, slatHead, x, heights.uprightHead(), LineKind.VISIBLE));
      }
      figures.addAll(heights.uprightEnds(low, high));
      return figures;
    }

    List<Figure> rail() {
      PaperBox box =
          new PaperBox(
              x(joint.rail().low().x()),
              heights.underside(),
              x(joint.rail().high().x()),
              heights.railTop());
      List<Figure> figures = new ArrayList<>(JointWood.RAIL.hatch(box, circles()));
      figures.add(box.outline(LineKind.VISIBLE));
      double middle = x(joint.axisX());
      figures.add(Strokes.line(middle, box.bottom() - 3, middle, box.top() + 3, LineKind.CENTRE));
      return figures;
    }

    private List<Figure.Circle> circles() {
      double radius = onPaper(joint.diameter()) / 2;
      return joint.axes().stream()
          .map(
              axis ->
                  new Figure.Circle(
                      new PaperPoint(x(joint.axisX()), heights.y(axis)), radius, LineKind.VISIBLE))
          .toList();
    }

    List<Figure> dowels() {
      List<Figure> figures = new ArrayList<>();
      double reach = onPaper(joint.rail().high().x().minus(joint.axisX())) + 3;
      for (Figure.Circle circle : circles()) {
        figures.addAll(JointWood.DOWEL.hatch(circle));
        figures.add(circle);
        double x = circle.centre().x();
        double y = circle.centre().y();
        figures.add(Strokes.line(x - reach, y, x + reach, y, LineKind.CENTRE));
      }
      figures.addAll(diameter());
      return figures;
    }

    /** The word on the holes, beside the lowest one. */
    private List<Figure> diameter() {
      Figure.Circle circle = circles().get(0);
      double across = circle.radius() * Math.sqrt(0.5);
      double x = x(joint.upright().high().x()) + 4;
      double y = Math.max(heights.underside() - 5, circle.centre().y() - circle.radius() - 6);
      String words =
          (joint.axes().size() == 1 ? "" : joint.axes().size() + " × ")
              + "ø "
              + lengths.number(joint.diameter());
      List<Figure> figures =
          new ArrayList<>(
              Arrows.to(
                  List.of(
                      new PaperPoint(x + 1, y),
                      new PaperPoint(x, y),
                      circle.centre().moved(across, -across))));
      figures.add(Paragraph.text(x + 1.8, y - LETTERING / 2, LETTERING, words, Figure.Align.START));
      return figures;
    }

    List<Figure> slat() {
      Box box = slat.box();
      double foot = heights.y(box.low().z());
      double head = heights.y(box.high().z());
      double from = x(box.low().x());
      double to = x(box.high().x());
      PaperBox seen = new PaperBox(from, foot, Math.min(to, end()), head);
      List<Figure> figures = new ArrayList<>();
      if (isCut(slat)) {
        figures.addAll(JointWood.SLAT.hatch(seen));
      }
      LineKind line = isCut(slat) ? LineKind.VISIBLE : LineKind.NEIGHBOUR;
      figures.add(Strokes.line(from, foot, from, head, line));
      figures.add(Strokes.line(from, head, seen.right(), head, line));
      figures.add(Strokes.line(from, foot, seen.right(), foot, line));
      figures.add(
          to > end()
              ? BreakLine.upright(end(), foot, head)
              : Strokes.line(to, foot, to, head, line));
      return figures;
    }

    /** Those of the slat: cut, beyond the cut in its wood, or in front of it. */
    List<Figure> fasteners() {
      List<Figure> figures = new ArrayList<>();
      for (Fastener fastener : joint.fasteners()) {
        if (fastener.through().equals(slat)) {
          figures.addAll(
              FastenerSketch.figures(
                  fastener.kind(),
                  x(fastener.head().x()),
                  heights.y(fastener.head().z()),
                  heights.y(fastener.head().z().minus(fastener.length())),
                  onPaper(fastener.diameter()),
                  kind(fastener)));
        }
      }
      return figures;
    }

    private LineKind kind(Fastener fastener) {
      int order = joint.depth(fastener.head().y()).compareTo(joint.across());
      if (order == 0) {
        return LineKind.VISIBLE;
      }
      return order < 0 ? LineKind.HIDDEN : LineKind.NEIGHBOUR;
    }

    List<Figure> dimensions() {
      List<Figure> figures = new ArrayList<>();
      figures.addAll(JointAcross.this.heights.figures(heights.underside(), left, -1));
      figures.addAll(widths.figures(x(joint.upright().low().x()), heights.bottom(), -1));
      double head = heights.y(slat.box().high().z());
      figures.addAll(fastener.figures(x(joint.rail().low().x()), heights.top() + 4, head));
      return figures;
    }
  }
}
