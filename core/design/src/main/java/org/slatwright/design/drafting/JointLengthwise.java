package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Axis;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Piece;
import org.slatwright.design.drafting.DimensionChain.Link;

/**
 * A joint cut along the axes of its dowels, seen from the left: the upright, the end of the rail,
 * and the slats as far as the first fastener. Dowels are not cut lengthwise (ISO 128-3).
 */
final class JointLengthwise implements SheetBlock {

  static final double TITLE = 3.5;
  static final double ABOVE = TITLE + 11;

  private static final double LEFT = 12;
  private static final double BALLOON = 2.8;
  private static final double LETTERING = 2.5;
  private static final double BESIDE_HOLE = 10;
  private static final double BESIDE_CUT = 14;
  private static final double EDGE = 3;

  /** Beyond the hole nothing is drawn farther on than that: slats may lie anywhere. */
  private static final Length FARTHEST = Length.mm(75);

  private final JointShown joint;
  private final LengthFormat lengths;
  private final Scale scale;
  private final ChainRows below;
  private final Optional<ChainPair> right;

  JointLengthwise(JointShown joint, LengthFormat lengths, Scale scale) {
    this.joint = joint;
    this.lengths = lengths;
    this.scale = scale;
    this.below = below();
    this.right = showsFastener() ? Optional.of(fastener()) : Optional.empty();
  }

  private double onPaper(Length length) {
    return length.inMm() * scale.factor();
  }

  private Length holeEnd() {
    return joint.uprightDepth().plus(joint.holeDepth());
  }

  private Length fastenerDepth() {
    return joint.depth(joint.fastener().head().y());
  }

  private boolean showsFastener() {
    return !fastenerDepth().isMoreThan(holeEnd().plus(FARTHEST));
  }

  /** How far from the outer face of the upright the picture goes, on paper. */
  private double reach() {
    double hole = onPaper(holeEnd()) + BESIDE_HOLE;
    double cut = onPaper(joint.across()) + BESIDE_CUT;
    double fastener = showsFastener() ? onPaper(fastenerDepth()) + BESIDE_CUT : 0;
    return Math.max(Math.max(hole, cut), fastener);
  }

  private ChainRows below() {
    Length upright = joint.uprightDepth();
    return new ChainRows(
        List.of(
            new AcrossChain(
                List.of(link(Length.ZERO, upright), link(upright, joint.dowelLength()))),
            new AcrossChain(List.of(link(upright, holeEnd()))),
            new AcrossChain(List.of(link(Length.ZERO, joint.dowelLength())))));
  }

  /** How deep it is in the rail, the slat, and its length over all. */
  private ChainPair fastener() {
    Length tip = joint.tip();
    Length rail = joint.rail().high().z().minus(tip);
    return ChainPair.up(
        List.of(link(Length.ZERO, rail), link(rail, joint.fastener().length())), lengths);
  }

  private Link link(Length from, Length to) {
    Length value = to.minus(from);
    return new Link(onPaper(from), onPaper(to), value, lengths.number(value));
  }

  @Override
  public double width() {
    return LEFT + reach() + right.map(ChainPair::depth).orElse(0.0) + EDGE;
  }

  @Override
  public double height() {
    return EDGE + below.depth() + new JointHeights(joint, scale, 0).height() + ABOVE;
  }

  @Override
  public View view(double left, double bottom) {
    Sketch sketch =
        new Sketch(left + LEFT, new JointHeights(joint, scale, bottom + EDGE + below.depth()));
    List<Figure> figures = new ArrayList<>();
    figures.addAll(sketch.upright());
    figures.addAll(sketch.rail());
    figures.addAll(sketch.slats());
    figures.addAll(sketch.dowels());
    if (showsFastener()) {
      figures.addAll(sketch.fasteners());
    }
    figures.addAll(sketch.cuttingPlane());
    figures.addAll(sketch.dimensions());
    figures.addAll(sketch.balloons());
    figures.add(
        Paragraph.text(
            left + LEFT,
            bottom + height() - TITLE,
            TITLE,
            "Cut along the dowel",
            Figure.Align.START));
    return new View("joint-lengthwise", "Cut along the dowel", Optional.of(scale), figures);
  }

  /** The drawing at one place on the sheet. */
  private final class Sketch {

    private final double left;
    private final JointHeights heights;

    Sketch(double left, JointHeights heights) {
      this.left = left;
      this.heights = heights;
    }

    private double x(Length depth) {
      return left + onPaper(depth);
    }

    private double end() {
      return left + reach();
    }

    private double face() {
      return x(joint.uprightDepth());
    }

    List<Figure> upright() {
      List<Figure> figures = new ArrayList<>();
      double foot = heights.uprightFoot();
      double head = heights.uprightHead();
      for (PaperBox wood : between(foot, head, left, face())) {
        figures.addAll(JointWood.UPRIGHT.hatch(wood));
      }
      figures.add(Strokes.line(left, foot, left, head, LineKind.VISIBLE));
      figures.add(Strokes.line(face(), foot, face(), head, LineKind.VISIBLE));
      figures.addAll(heights.uprightEnds(left, face()));
      return figures;
    }

    List<Figure> rail() {
      List<Figure> figures = new ArrayList<>();
      double foot = heights.underside();
      double head = heights.railTop();
      double hole = x(holeEnd());
      for (PaperBox wood : between(foot, head, face(), hole)) {
        figures.addAll(JointWood.RAIL.hatch(wood));
      }
      figures.addAll(JointWood.RAIL.hatch(new PaperBox(hole, foot, end(), head)));
      figures.add(Strokes.line(face(), foot, end(), foot, LineKind.VISIBLE));
      figures.add(Strokes.line(face(), head, end(), head, LineKind.VISIBLE));
      figures.add(BreakLine.upright(end(), foot, head));
      return figures;
    }

    /** What the holes leave of a piece, below, between and above them. */
    private List<PaperBox> between(double foot, double head, double from, double to) {
      List<PaperBox> boxes = new ArrayList<>();
      double at = foot;
      for (Box dowel : joint.dowels()) {
        boxes.add(new PaperBox(from, at, to, heights.y(dowel.low().z())));
        at = heights.y(dowel.high().z());
      }
      boxes.add(new PaperBox(from, at, to, head));
      return boxes;
    }

    List<Figure> slats() {
      List<Figure> figures = new ArrayList<>();
      for (Piece slat : joint.slats()) {
        Box box = slat.box();
        double from = x(joint.depth(box.high().y()));
        double to = x(joint.depth(box.low().y()));
        if (from < end()) {
          double foot = heights.y(box.low().z());
          double head = heights.y(box.high().z());
          PaperBox seen = new PaperBox(from, foot, Math.min(to, end()), head);
          figures.addAll(JointWood.SLAT.hatch(seen));
          figures.add(Strokes.line(from, foot, from, head, LineKind.VISIBLE));
          figures.add(Strokes.line(from, head, seen.right(), head, LineKind.VISIBLE));
          figures.add(
              to > end()
                  ? BreakLine.upright(end(), foot, head)
                  : Strokes.line(to, foot, to, head, LineKind.VISIBLE));
        }
      }
      return figures;
    }

    List<Figure> dowels() {
      List<Figure> figures = new ArrayList<>();
      double hole = x(holeEnd());
      double dowelEnd = x(joint.dowelLength());
      for (Box dowel : joint.dowels()) {
        double foot = heights.y(dowel.low().z());
        double head = heights.y(dowel.high().z());
        figures.add(Strokes.box(left, foot, dowelEnd, head, LineKind.VISIBLE));
        figures.add(Strokes.line(dowelEnd, foot, hole, foot, LineKind.VISIBLE));
        figures.add(Strokes.line(dowelEnd, head, hole, head, LineKind.VISIBLE));
        figures.add(Strokes.line(hole, foot, hole, head, LineKind.VISIBLE));
        double axis = (foot + head) / 2;
        figures.add(Strokes.line(left - 3, axis, hole + 3, axis, LineKind.CENTRE));
      }
      return figures;
    }

    /** Those to the left of the cut are cut away; the others stand in the wood beyond it. */
    List<Figure> fasteners() {
      List<Figure> figures = new ArrayList<>();
      for (Fastener fastener : joint.fasteners()) {
        double axis = x(joint.depth(fastener.head().y()));
        if (axis < end() - 2) {
          boolean away = fastener.head().x().isLessThan(joint.axisX());
          figures.addAll(
              FastenerSketch.figures(
                  fastener.kind(),
                  axis,
                  heights.y(fastener.head().z()),
                  heights.y(fastener.head().z().minus(fastener.length())),
                  onPaper(fastener.diameter()),
                  away ? LineKind.NEIGHBOUR : LineKind.HIDDEN));
        }
      }
      return figures;
    }

    /** Where the other section is cut, looking to the upright. */
    List<Figure> cuttingPlane() {
      double x = x(joint.across());
      double head = heights.y(heights.slatTop());
      double foot = heights.underside();
      List<Figure> figures = new ArrayList<>();
      figures.add(Strokes.line(x, foot - 2, x, head + 2, LineKind.CENTRE));
      figures.add(Strokes.line(x, head + 2, x, head + 6, LineKind.VISIBLE));
      figures.add(Strokes.line(x, foot - 2, x, foot - 6, LineKind.VISIBLE));
      figures.addAll(Arrows.level(x + 5, x, head + 6));
      figures.addAll(Arrows.level(x + 5, x, foot - 6));
      figures.add(Paragraph.text(x, head + 7.5, TITLE, "A", Figure.Align.MIDDLE));
      figures.add(Paragraph.text(x, foot - 7.5 - TITLE, TITLE, "A", Figure.Align.MIDDLE));
      return figures;
    }

    List<Figure> dimensions() {
      List<Figure> figures = new ArrayList<>(below.figures(left, heights.bottom(), -1));
      double lowest = heights.y(joint.dowels().get(0).low().z());
      for (Length place : List.of(joint.dowelLength(), holeEnd())) {
        double x = x(place);
        figures.add(Strokes.line(x, lowest, x, heights.bottom() - 1, LineKind.THIN));
      }
      right.ifPresent(
          chain -> {
            double tip = heights.y(joint.tip());
            figures.add(Strokes.line(x(fastenerDepth()) + 1, tip, end() + 1, tip, LineKind.THIN));
            figures.addAll(chain.figures(tip, end(), 1));
          });
      return figures;
    }

    List<Figure> balloons() {
      List<Figure> figures = new ArrayList<>();
      double side = left - 8;
      double head = heights.top() - 5;
      figures.addAll(balloon(side, head, mark(joint.joint().upright()), left + 3, head - 2));
      double dowel = heights.y(joint.dowels().get(0).low().z());
      figures.addAll(
          balloon(side, dowel - 4, mark(joint.joint().pins().get(0).dowel()), left + 4, dowel + 1));
      double rail = Math.max(x(holeEnd()), x(joint.across()) + 2) + 5.5;
      double under = heights.underside();
      figures.addAll(balloon(rail, under - 5.5, mark(joint.joint().rail()), rail, under + 3));
      Piece slat = joint.slats().get(0);
      double slatEnd = Math.min(x(joint.depth(slat.box().low().y())), end()) - 1.5;
      double slatStart = x(joint.depth(slat.box().high().y())) + 1.5;
      if (slatStart < end() - 2) {
        double x = Math.max(x(joint.across()), showsFastener() ? x(fastenerDepth()) : 0) + 9.5;
        double top = heights.y(heights.slatTop());
        double middle = heights.y(slat.box().low().z().plus(slat.box().size(Axis.Z).half()));
        double at = Math.max(slatStart, Math.min(x, slatEnd));
        figures.addAll(balloon(x, top + 5.5, mark(slat), at, middle));
      }
      return figures;
    }

    private String mark(Piece piece) {
      return piece.part().mark();
    }

    private List<Figure> balloon(double x, double y, String mark, double toX, double toY) {
      double reach = Math.hypot(toX - x, toY - y);
      List<Figure> figures = new ArrayList<>();
      figures.add(new Figure.Circle(new PaperPoint(x, y), BALLOON, LineKind.THIN));
      figures.add(Paragraph.text(x, y - LETTERING / 2, LETTERING, mark, Figure.Align.MIDDLE));
      figures.addAll(
          Leaders.dotted(
              x + (toX - x) * BALLOON / reach, y + (toY - y) * BALLOON / reach, toX, toY));
      return figures;
    }
  }
}
