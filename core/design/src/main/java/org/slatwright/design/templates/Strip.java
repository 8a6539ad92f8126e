package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;
import org.slatwright.design.drafting.FrameSketch;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.drafting.Strokes;
import org.slatwright.design.templates.printing.Draft;

/**
 * A standing strip: a face of the work with its lower end below, labels beside it, a heading above.
 *
 * @param name of the template
 * @param heading what is said above, below the title
 * @param sketch below the heading
 * @param edges of the face at the left and right; dashed where they are to be folded, so that the
 *     strip lies over the work and cannot shift sideways
 * @param marks at the right: heights and their numbers
 * @param zones at the left: what lies there
 * @param lowerEnd what the lower end is called
 * @param foot what is said of it, below
 */
record Strip(
    String name,
    String title,
    List<String> heading,
    Optional<FrameSketch> sketch,
    MarkedFace face,
    LineKind edges,
    Labels marks,
    Labels zones,
    String lowerEnd,
    String foot,
    List<String> use) {

  /** The name is read again at least this often, so that a page of a long strip is known. */
  private static final double REPEAT = 200;

  private static final double NAME_COLUMN = 5;
  private static final double NAME_BASELINE = 1.6;
  private static final double NAME_GAP = 5;
  private static final double LEAST_WIDTH = 48;
  private static final double FOOT = 8;
  private static final double FOOT_BASELINE = 2;
  private static final double ABOVE = 2;
  private static final double SKETCH_LEFT = 4;

  Draft draft() {
    PaperPoint corner = new PaperPoint(zones.width(), bottom());
    double right = corner.x() + face.width().inMm();
    double top = corner.y() + face.height().inMm();
    double height = top + ABOVE + sketchHeight() + headingBlock().height();
    List<Figure> figures = new ArrayList<>();
    figures.add(Strokes.box(0, 0, width(), height, LineKind.THIN));
    figures.addAll(face.figures(corner));
    figures.add(Strokes.line(corner.x(), corner.y(), right, corner.y(), LineKind.THIN));
    figures.add(Strokes.line(corner.x(), top, right, top, LineKind.THIN));
    figures.add(Strokes.line(corner.x(), FOOT, corner.x(), top, edges));
    figures.add(Strokes.line(right, FOOT, right, top, edges));
    figures.addAll(zones.figures(Labels.Side.LEFT, corner.x(), corner.y(), FOOT, top));
    figures.addAll(marks.figures(Labels.Side.RIGHT, right, corner.y(), FOOT, top));
    figures.add(footText());
    figures.addAll(names(top));
    figures.addAll(headingBlock().figures(0, height));
    sketch.ifPresent(
        drawn -> figures.addAll(drawn.figures(SKETCH_LEFT, top + ABOVE + drawn.height())));
    return new Draft(
        name,
        title,
        use,
        Length.roundedMm(width()),
        Length.roundedMm(height),
        figures,
        face.whole(corner));
  }

  /** Where the face starts: higher up where there are more labels than room beside it. */
  private double bottom() {
    double labels = Math.max(marks.height(), zones.height());
    return FOOT + Math.max(0, labels - face.height().inMm());
  }

  private double width() {
    double wide = zones.width() + face.width().inMm() + marks.width() + NAME_COLUMN;
    return Math.ceil(Math.max(LEAST_WIDTH, wide));
  }

  private double sketchHeight() {
    return sketch.map(FrameSketch::height).orElse(0.0);
  }

  private Heading headingBlock() {
    return new Heading(title, heading, width());
  }

  private Figure footText() {
    String text =
        Paragraph.cut(lowerEnd + ": " + foot, Labels.LETTERING, width() - 2 * FOOT_BASELINE);
    return Paragraph.text(FOOT_BASELINE, FOOT_BASELINE, Labels.LETTERING, text, Figure.Align.START);
  }

  /** Read from the right, from the lower end up. */
  private List<Figure> names(double top) {
    String text = name.substring(name.lastIndexOf('/') + 1) + ", 1:1  ← " + lowerEnd;
    double length = Lettering.width(text, Labels.LETTERING);
    List<Figure> figures = new ArrayList<>();
    for (double y = FOOT + NAME_GAP; y + length <= top; y += REPEAT) {
      PaperPoint at = new PaperPoint(width() - NAME_BASELINE, y);
      figures.add(new Figure.Text(at, Labels.LETTERING, text, Figure.Align.START, 90));
    }
    return figures;
  }
}
