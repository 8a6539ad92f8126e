package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.LineKind;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.design.drafting.Strokes;
import org.slatwright.design.templates.printing.Draft;

/** Both ends of a rail side by side. */
final class RailEnds {

  private static final double PAD = 3;

  private final Part rail;
  private final LengthFormat lengths;
  private final RailEnd start;
  private final RailEnd far;

  private RailEnds(Part rail, LengthFormat lengths) {
    this.rail = rail;
    this.lengths = lengths;
    this.start = new RailEnd(rail, Face.START_END, lengths);
    this.far = new RailEnd(rail, Face.FAR_END, lengths);
  }

  /** One for each different rail. */
  static List<Draft> of(Assembly assembly, LengthFormat lengths) {
    return assembly.parts().stream()
        .filter(part -> part.role() == Role.RAIL)
        .map(part -> new RailEnds(part, lengths).draft())
        .toList();
  }

  private Draft draft() {
    double width = Math.ceil(start.width() + far.width() + 3 * PAD);
    Heading heading = new Heading("Ends of rail " + rail.mark(), heading(), width);
    double height = PAD + start.height() + heading.height();
    PaperPoint atStart = new PaperPoint(PAD, PAD);
    PaperPoint atFar = new PaperPoint(width - PAD - far.width(), PAD);
    List<Figure> figures = new ArrayList<>();
    figures.add(Strokes.box(0, 0, width, height, LineKind.THIN));
    figures.addAll(start.figures(atStart));
    figures.addAll(far.figures(atFar));
    figures.addAll(heading.figures(0, height));
    List<Draft.Disc> whole =
        Stream.concat(
                start.face().whole(start.corner(atStart)).stream(),
                far.face().whole(far.corner(atFar)).stream())
            .toList();
    return new Draft(
        "templates/" + rail.mark() + "-end",
        "Ends of rail " + rail.mark(),
        use(),
        Length.roundedMm(width),
        Length.roundedMm(height),
        figures,
        whole);
  }

  private List<String> heading() {
    List<String> lines = new ArrayList<>();
    lines.add(
        rail.mark()
            + "-end, scale 1:1, for "
            + rail.quantity()
            + " rails of "
            + lengths.section(rail.shape().thickness(), rail.shape().width())
            + ", each end seen from outside");
    lines.addAll(start.words());
    lines.addAll(far.words());
    return lines;
  }

  private List<String> use() {
    return List.of(
        Advice.CHECK,
        "Only for holes drilled before the frame is glued; through a glued upright the jig or the"
            + " drilled upright itself shows the way.",
        "Cut out both ends with their flaps and fold the flaps back along the dashed lines, one over"
            + " the face side and one over the face edge; the other two edges of the paper must lie"
            + " flush with the wood.",
        "Take the start end for the front end of a rail and the far end for the rear one; they are"
            + " mirror images, so mark face side and face edge on every rail first.",
        Advice.PRICK,
        Advice.SAME_DAY,
        Advice.DRILLING);
  }
}
