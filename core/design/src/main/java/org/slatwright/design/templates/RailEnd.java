package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Point2;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;

/**
 * One end of a rail seen from outside, the face edge below: the face side is then at the right of
 * the start end and at the left of the far end. Flaps fold over the face side and the face edge.
 */
final class RailEnd {

  private static final double WORDS_COLUMN = 5;
  private static final double WORDS_BASELINE = 1.6;
  private static final double TICK = 3;
  private static final double EDGE_FLAP = 9;
  private static final double NAME_ABOVE = 1.5;
  private static final double ABOVE = 5;
  private static final double LEAST_WIDTH = 30;

  private final Part rail;
  private final Face end;
  private final List<Hole> holes;
  private final LengthFormat lengths;
  private final Labels heights;

  RailEnd(Part rail, Face end, LengthFormat lengths) {
    this.rail = rail;
    this.end = end;
    this.lengths = lengths;
    this.holes = rail.holes().stream().filter(hole -> hole.face() == end).toList();
    this.heights = new Labels(holes.stream().map(this::mark).toList());
  }

  private Mark mark(Hole hole) {
    return new Mark(hole.along(), hole.name() + " " + lengths.number(hole.along()));
  }

  /** With the flap of the face side, in mm. */
  double width() {
    return Math.max(LEAST_WIDTH, wood()) + sideFlap();
  }

  /** With the flap of the face edge below and its name above, in mm. */
  double height() {
    return EDGE_FLAP + rail.shape().width().inMm() + ABOVE;
  }

  /** Where the lower left corner of the wood lies, when that of the whole lies there. */
  PaperPoint corner(PaperPoint at) {
    return at.moved(faceSideRight() ? width() - sideFlap() - wood() : sideFlap(), EDGE_FLAP);
  }

  private double wood() {
    return rail.shape().thickness().inMm();
  }

  private double sideFlap() {
    return heights.width() + WORDS_COLUMN;
  }

  private boolean faceSideRight() {
    return end == Face.START_END;
  }

  /** The end with its holes. */
  MarkedFace face() {
    List<MarkedFace.Spot> spots =
        holes.stream()
            .map(hole -> new MarkedFace.Spot(centre(hole), hole.diameter(), hole.name()))
            .toList();
    return new MarkedFace(
        rail.shape().thickness(), rail.shape().width(), List.of(), List.of(), List.of(), spots);
  }

  private Point2 centre(Hole hole) {
    return new Point2(faceSideRight() ? hole.across() : fromFaceSide(hole), hole.along());
  }

  private Length fromFaceSide(Hole hole) {
    return rail.shape().thickness().minus(hole.across());
  }

  /** Drawn with the lower left corner of the whole there. */
  List<Figure> figures(PaperPoint at) {
    PaperPoint corner = corner(at);
    double right = corner.x() + wood();
    double top = corner.y() + rail.shape().width().inMm();
    double fold = faceSideRight() ? right : corner.x();
    List<Figure> figures = new ArrayList<>(face().figures(corner));
    figures.addAll(outline(corner, right, top));
    Labels.Side side = faceSideRight() ? Labels.Side.RIGHT : Labels.Side.LEFT;
    figures.addAll(heights.figures(side, fold, corner.y(), corner.y(), top));
    figures.addAll(words(at, corner, right, top));
    return figures;
  }

  /** What each face is called, and where the holes lie across the face edge. */
  private List<Figure> words(PaperPoint at, PaperPoint corner, double right, double top) {
    List<Figure> figures = new ArrayList<>();
    for (MarkedFace.Spot spot : face().spots()) {
      double x = corner.x() + spot.centre().x().inMm();
      figures.add(Strokes.line(x, corner.y(), x, corner.y() - TICK, LineKind.THIN));
    }
    double middle = (corner.x() + right) / 2;
    figures.add(level(middle, at.y() + NAME_ABOVE, "face edge"));
    figures.add(level(middle, top + NAME_ABOVE, end.word()));
    double words =
        at.x() + (faceSideRight() ? width() - WORDS_BASELINE : WORDS_COLUMN - NAME_ABOVE);
    figures.add(
        new Figure.Text(
            new PaperPoint(words, (corner.y() + top) / 2),
            Labels.LETTERING,
            "face side",
            Figure.Align.MIDDLE,
            90));
    return figures;
  }

  private static Figure level(double middle, double y, String text) {
    return Paragraph.text(middle, y, Labels.LETTERING, text, Figure.Align.MIDDLE);
  }

  /** The end and both flaps; their folds are dashed. */
  private List<Figure> outline(PaperPoint corner, double right, double top) {
    double fold = faceSideRight() ? right : corner.x();
    double other = faceSideRight() ? corner.x() : right;
    double far = faceSideRight() ? right + sideFlap() : corner.x() - sideFlap();
    double foot = corner.y() - EDGE_FLAP;
    List<PaperPoint> around =
        List.of(
            new PaperPoint(fold, corner.y()),
            new PaperPoint(far, corner.y()),
            new PaperPoint(far, top),
            new PaperPoint(other, top),
            new PaperPoint(other, foot),
            new PaperPoint(fold, foot));
    return List.of(
        new Figure.Polyline(around, true, LineKind.THIN),
        Strokes.line(fold, corner.y(), fold, top, LineKind.HIDDEN),
        Strokes.line(other, corner.y(), fold, corner.y(), LineKind.HIDDEN));
  }

  /** Where each hole lies, and how deep it is. */
  List<String> words() {
    return holes.stream()
        .map(
            hole ->
                hole.name()
                    + ": Ø "
                    + lengths.withUnit(hole.diameter())
                    + ", "
                    + lengths.withUnit(fromFaceSide(hole))
                    + " from the face side, "
                    + lengths.withUnit(hole.along())
                    + " from the face edge, "
                    + lengths.withUnit(hole.depth())
                    + " deep")
        .toList();
  }
}
