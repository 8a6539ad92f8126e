package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Point2;
import org.slatwright.design.drafting.PaperBox;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;
import org.slatwright.design.templates.printing.Draft;

/**
 * A flat face of the work and what is marked on it, from its lower left corner.
 *
 * @param width to the right
 * @param height up
 * @param meeting where another piece lies against it, tinted
 * @param behind what lies inside the wood, dashed
 * @param lines heights of lines across
 * @param spots to be pricked
 */
record MarkedFace(
    Length width,
    Length height,
    List<Extent> meeting,
    List<Extent> behind,
    List<Length> lines,
    List<Spot> spots) {

  /** How far the arms of a cross run on beyond the circle. */
  private static final double ARM = 2;

  private static final double LETTER_GAP = 0.8;
  private static final double LETTER_ROOM = 4;

  MarkedFace {
    meeting = List.copyOf(meeting);
    behind = List.copyOf(behind);
    lines = List.copyOf(lines);
    spots = List.copyOf(spots);
  }

  /**
   * A centre to prick.
   *
   * @param diameter of what goes in there
   * @param letter beside it; may be empty
   */
  record Spot(Point2 centre, Length diameter, String letter) {}

  /** Drawn with its lower left corner there, without its edges. */
  List<Figure> figures(PaperPoint corner) {
    List<Figure> figures = new ArrayList<>();
    for (Extent each : meeting) {
      PaperBox box = box(each, corner);
      figures.add(box.fill(Figure.Shade.TINT));
      figures.add(box.outline(LineKind.THIN));
    }
    behind.forEach(each -> figures.add(box(each, corner).outline(LineKind.HIDDEN)));
    for (Length line : lines) {
      double y = corner.y() + line.inMm();
      figures.add(Strokes.line(corner.x(), y, corner.x() + width.inMm(), y, LineKind.THIN));
    }
    for (int i = 0; i < spots.size(); i++) {
      figures.addAll(cross(spots.get(i), at(spots.get(i).centre(), corner), i % 2 == 0));
    }
    return figures;
  }

  /** What no cut may run through. */
  List<Draft.Disc> whole(PaperPoint corner) {
    return spots.stream()
        .map(
            spot ->
                new Draft.Disc(
                    at(spot.centre(), corner),
                    spot.diameter().inMm() / 2
                        + ARM
                        + (spot.letter().isEmpty() ? 0 : LETTER_GAP + LETTER_ROOM)))
        .toList();
  }

  /** Letters right and left in turn, so that those of close neighbours stay apart. */
  private static List<Figure> cross(Spot spot, PaperPoint centre, boolean right) {
    double radius = spot.diameter().inMm() / 2;
    double reach = radius + ARM;
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure.Circle(centre, radius, LineKind.THIN));
    figures.add(
        Figure.Polyline.line(centre.moved(-reach, 0), centre.moved(reach, 0), LineKind.THIN));
    figures.add(
        Figure.Polyline.line(centre.moved(0, -reach), centre.moved(0, reach), LineKind.THIN));
    if (!spot.letter().isEmpty()) {
      double beside = reach + LETTER_GAP;
      figures.add(
          Paragraph.text(
              centre.x() + (right ? beside : -beside),
              centre.y() - Labels.LETTERING / 2,
              Labels.LETTERING,
              spot.letter(),
              right ? Figure.Align.START : Figure.Align.END));
    }
    return figures;
  }

  private static PaperBox box(Extent extent, PaperPoint corner) {
    PaperPoint low = at(extent.low(), corner);
    PaperPoint high = at(extent.high(), corner);
    return new PaperBox(low.x(), low.y(), high.x(), high.y());
  }

  private static PaperPoint at(Point2 point, PaperPoint corner) {
    return corner.moved(point.x().inMm(), point.y().inMm());
  }
}
