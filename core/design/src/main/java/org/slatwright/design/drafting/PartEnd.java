package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Shape;
import org.slatwright.design.drafting.DimensionChain.Link;

/**
 * The end of a lying part that stands to the right of its side: in first angle the one seen from
 * the left, in third angle the one seen from the right. The face side is a thick line, and a
 * triangle stands on the face edge.
 */
final class PartEnd {

  /** Least size of an end with holes on paper, in mm: their numbers have room beside it. */
  private static final double LEAST_WITH_HOLES = 14;

  private static final double TRIANGLE = 2;
  private static final double ABOVE = 1.8;
  private static final double OVERRUN = 1.5;

  private final Part part;
  private final Scale scale;
  private final Face face;
  private final String name;
  private final Optional<ChainPair> thickness;
  private final Optional<ChainPair> heights;

  private PartEnd(Part part, LengthFormat lengths, Scale scale) {
    this.part = part;
    this.scale = scale;
    this.face = Angle.of(lengths.unit()) == Angle.FIRST ? Face.START_END : Face.FAR_END;
    this.name = part.holes().isEmpty() ? "" : name() + ", " + scale;
    this.thickness =
        part.shape() instanceof Shape.Rod
            ? Optional.empty()
            : Optional.of(
                ChainPair.across(Link.between(across(), this::onPaper, lengths), lengths));
    this.heights =
        part.holes().isEmpty()
            ? Optional.empty()
            : Optional.of(ChainPair.up(Link.between(up(), this::onPaper, lengths), lengths));
  }

  /**
   * Of a part.
   *
   * @param beside the scale of its side; an end with holes is drawn larger where it has to
   */
  static PartEnd of(Part part, LengthFormat lengths, Scale beside) {
    double least = Length.min(part.shape().width(), part.shape().thickness()).inMm();
    Scale large =
        Scales.smallest(
            lengths.unit(), candidate -> least * candidate.factor() >= LEAST_WITH_HOLES);
    boolean larger = !part.holes().isEmpty() && large.real() < beside.real();
    return new PartEnd(part, lengths, larger ? large : beside);
  }

  private List<Hole> inEnd() {
    return part.holes().stream().filter(hole -> hole.face() == face).toList();
  }

  private List<Hole> inFaceSide() {
    return part.holes().stream().filter(hole -> hole.face() == Face.FACE_SIDE).toList();
  }

  /** From the left edge of the end, as it is seen. */
  private Length fromLeft(Hole hole) {
    return face == Face.START_END ? hole.across() : part.shape().thickness().minus(hole.across());
  }

  private TreeSet<Length> across() {
    TreeSet<Length> places = new TreeSet<>(List.of(Length.ZERO, part.shape().thickness()));
    inEnd().stream().map(this::fromLeft).forEach(places::add);
    return places;
  }

  private TreeSet<Length> up() {
    TreeSet<Length> places = new TreeSet<>(List.of(Length.ZERO, part.shape().width()));
    inEnd().stream().map(Hole::along).forEach(places::add);
    inFaceSide().stream().map(Hole::across).forEach(places::add);
    return places;
  }

  private double onPaper(Length length) {
    return length.inMm() * scale.factor();
  }

  private double wide() {
    return onPaper(part.shape().thickness());
  }

  /** In mm. */
  double high() {
    return onPaper(part.shape().width());
  }

  private String name() {
    boolean start = face == Face.START_END;
    return part.role() == Role.UPRIGHT
        ? (start ? "floor end" : "top end")
        : (start ? "front end" : "rear end");
  }

  private double nameBeyond() {
    return Math.max(0, (Lettering.width(name, DimensionChain.LETTERING) - wide()) / 2);
  }

  /** What stands out at its left, in mm. */
  double before() {
    return Math.max(nameBeyond(), thickness.map(ChainPair::before).orElse(OVERRUN));
  }

  /** With what stands out at its right, in mm. */
  double width() {
    double after = Math.max(nameBeyond(), thickness.map(ChainPair::after).orElse(0.0));
    return wide() + Math.max(after, heights.map(ChainPair::depth).orElse(OVERRUN));
  }

  /** What stands out below, in mm. */
  double below() {
    return thickness.map(ChainPair::depth).orElse(OVERRUN);
  }

  /** What stands out above, in mm. */
  double above() {
    return name.isEmpty() ? OVERRUN : ABOVE + DimensionChain.LETTERING;
  }

  /** With its left edge there, and its middle at that height. */
  List<Figure> figures(double left, double axis) {
    PaperBox box = new PaperBox(left, axis - high() / 2, left + wide(), axis + high() / 2);
    if (part.shape() instanceof Shape.Rod) {
      return circle(box.middleX(), axis, wide() / 2);
    }
    List<Figure> figures = new ArrayList<>();
    figures.add(box.outline(LineKind.VISIBLE));
    inEnd()
        .forEach(
            hole ->
                figures.addAll(
                    circle(
                        left + onPaper(fromLeft(hole)),
                        box.bottom() + onPaper(hole.along()),
                        onPaper(hole.diameter()) / 2)));
    inFaceSide().stream().limit(1).forEach(hole -> figures.addAll(through(hole, box)));
    if (!name.isEmpty()) {
      figures.addAll(faces(box));
    }
    thickness.ifPresent(chain -> figures.addAll(chain.figures(left, box.bottom(), -1)));
    heights.ifPresent(chain -> figures.addAll(chain.figures(box.bottom(), box.right(), 1)));
    return figures;
  }

  private static List<Figure> circle(double x, double y, double radius) {
    double reach = radius + OVERRUN;
    return List.of(
        new Figure.Circle(new PaperPoint(x, y), radius, LineKind.VISIBLE),
        Strokes.line(x - reach, y, x + reach, y, LineKind.CENTRE),
        Strokes.line(x, y - reach, x, y + reach, LineKind.CENTRE));
  }

  /** What is hidden of a hole through the face side. */
  private List<Figure> through(Hole hole, PaperBox box) {
    double axis = box.bottom() + onPaper(hole.across());
    double radius = onPaper(hole.diameter()) / 2;
    return List.of(
        Strokes.line(box.left(), axis + radius, box.right(), axis + radius, LineKind.HIDDEN),
        Strokes.line(box.left(), axis - radius, box.right(), axis - radius, LineKind.HIDDEN),
        Strokes.line(box.left() - OVERRUN, axis, box.right() + OVERRUN, axis, LineKind.CENTRE));
  }

  private List<Figure> faces(PaperBox box) {
    double side = face == Face.START_END ? box.right() : box.left();
    return List.of(
        Strokes.line(side, box.bottom(), side, box.top(), LineKind.BORDER),
        new Figure.Fill(
            List.of(
                new PaperPoint(box.middleX() - TRIANGLE / 2, box.bottom()),
                new PaperPoint(box.middleX() + TRIANGLE / 2, box.bottom()),
                new PaperPoint(box.middleX(), box.bottom() + TRIANGLE)),
            Figure.Shade.INK),
        Paragraph.text(
            box.middleX(), box.top() + ABOVE, DimensionChain.LETTERING, name, Figure.Align.MIDDLE));
  }
}
