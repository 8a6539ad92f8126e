package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Shape;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;
import org.slatwright.design.templates.printing.Draft;

/**
 * One joint, unfolded: the drilled face of the upright between its two sides, from a little below
 * the rail to a little above it. Its outer edges lie where the rail begins.
 */
final class JointWrap {

  private static final double BEYOND = 12;
  private static final double LEAST_WIDTH = 90;
  private static final double WORDS_ABOVE = 1.5;

  private final Joint joint;
  private final LengthFormat lengths;
  private final Shape upright;

  private JointWrap(Joint joint, LengthFormat lengths) {
    this.joint = joint;
    this.lengths = lengths;
    this.upright = joint.upright().part().shape();
  }

  /** The joints are all alike; the first one stands for them. */
  static Draft of(Assembly assembly, LengthFormat lengths) {
    return new JointWrap(assembly.joints().get(0), lengths).draft();
  }

  private Draft draft() {
    double around = upright.width().plus(upright.thickness().times(2)).inMm();
    double width = Math.ceil(Math.max(LEAST_WIDTH, around));
    Heading heading = new Heading("Wrap-over for a joint", heading(), width);
    PaperPoint corner = new PaperPoint((width - upright.width().inMm()) / 2, BEYOND);
    double top = corner.y() + rail().inMm() + BEYOND;
    double height = top + heading.height();
    List<Figure> figures = new ArrayList<>(face().figures(corner));
    figures.addAll(panels(corner, top));
    figures.addAll(words(corner, width));
    figures.addAll(heading.figures(0, height));
    return new Draft(
        "templates/joint-wrap",
        "Wrap-over for a joint",
        use(),
        Length.roundedMm(width),
        Length.roundedMm(height),
        figures,
        face().whole(corner));
  }

  private Length rail() {
    return joint.rail().part().shape().width();
  }

  /** Of the upright, from the underside of the rail to its top. */
  private MarkedFace face() {
    List<MarkedFace.Spot> spots =
        joint.pins().stream()
            .map(Joint.Pin::uprightHole)
            .map(
                hole ->
                    new MarkedFace.Spot(
                        new Point2(upright.width().minus(hole.across()), aboveUnderside(hole)),
                        hole.diameter(),
                        number(hole)))
            .toList();
    Extent whole = new RailOnUpright(joint).extent();
    Extent meeting =
        new Extent(new Point2(whole.low().x(), Length.ZERO), new Point2(whole.high().x(), rail()));
    return new MarkedFace(upright.width(), rail(), List.of(meeting), List.of(), List.of(), spots);
  }

  private Length aboveUnderside(Hole hole) {
    return hole.along().minus(new RailOnUpright(joint).underside());
  }

  /** Counted from the underside of the rail, since the letters differ from joint to joint. */
  private String number(Hole hole) {
    List<Hole> holes = joint.pins().stream().map(Joint.Pin::uprightHole).toList();
    return String.valueOf(holes.indexOf(hole) + 1);
  }

  /** The outer edges, the folds, and the edges of the rail across all three panels. */
  private List<Figure> panels(PaperPoint corner, double top) {
    double fold = corner.x();
    double otherFold = fold + upright.width().inMm();
    double left = fold - upright.thickness().inMm();
    double right = otherFold + upright.thickness().inMm();
    double railTop = corner.y() + rail().inMm();
    return List.of(
        Strokes.box(left, 0, right, top, LineKind.THIN),
        Strokes.line(fold, 0, fold, top, LineKind.HIDDEN),
        Strokes.line(otherFold, 0, otherFold, top, LineKind.HIDDEN),
        Strokes.line(left, corner.y(), right, corner.y(), LineKind.THIN),
        Strokes.line(left, railTop, right, railTop, LineKind.THIN));
  }

  private List<Figure> words(PaperPoint corner, double width) {
    double railTop = corner.y() + rail().inMm();
    double below = corner.y() - WORDS_ABOVE - Labels.LETTERING;
    return List.of(
        centred(width, railTop + WORDS_ABOVE, "top of rail " + joint.rail().part().mark()),
        centred(width, below, "underside of rail"),
        centred(width, below - Labels.LETTERING * 1.7, "joint-wrap, 1:1"));
  }

  private static Figure centred(double width, double y, String text) {
    return Paragraph.text(width / 2, y, Labels.LETTERING, text, Figure.Align.MIDDLE);
  }

  private List<String> heading() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Scale 1:1, for measured stock "
            + lengths.section(upright.width(), upright.thickness())
            + ", rail "
            + show(rail())
            + " high");
    for (Joint.Pin pin : joint.pins()) {
      Hole hole = pin.uprightHole();
      lines.add(
          number(hole)
              + ": Ø "
              + show(hole.diameter())
              + ", "
              + show(aboveUnderside(hole))
              + " above the underside of the rail");
    }
    lines.add(
        "In the middle the drilled face, tinted where the rail meets the back of it; a side at either"
            + " hand. Fold along the dashed lines");
    return lines;
  }

  private List<String> use() {
    return List.of(
        Advice.CHECK,
        "Cut it out along its outer edge and fold both sides back sharply along the dashed lines.",
        "Put it over the outer face of the upright, top up. It fits when both folds lie on the"
            + " corners of the stock and the outer edges end level with its inner face, where the"
            + " rail begins; if not, measure the stock again and correct the rack file.",
        "Slide it until its two rail lines meet the edges of the rail on both sides, or the rail"
            + " lines squared round a loose upright, and tape it there. At a joint near the end of"
            + " the upright it stands out over the end.",
        Advice.PRICK,
        Advice.SAME_DAY,
        Advice.DRILLING);
  }

  private String show(Length length) {
    return lengths.withUnit(length);
  }
}
