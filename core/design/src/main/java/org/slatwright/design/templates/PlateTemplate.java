package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Lettering;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Extent;
import org.slatwright.api.model.Outline;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.drafting.OutlineView;
import org.slatwright.design.drafting.Paragraph;
import org.slatwright.design.outline.Polygons;
import org.slatwright.design.templates.printing.Draft;

/** A plate of the jig, to be glued on sheet and cut by hand. */
final class PlateTemplate {

  private static final double PAD = 3;
  private static final double LEAST_WIDTH = 50;
  private static final double MARK = 5;
  private static final double CLEAR = 1;

  private final Plate plate;
  private final LengthFormat lengths;
  private final Extent extent;

  private PlateTemplate(Plate plate, LengthFormat lengths) {
    this.plate = plate;
    this.lengths = lengths;
    this.extent = Extent.of(plate.boundary());
  }

  /** Each different plate once. */
  static List<Draft> of(Jig jig, LengthFormat lengths) {
    return jig.plates().stream().map(plate -> new PlateTemplate(plate, lengths).draft()).toList();
  }

  private Draft draft() {
    double width = Math.ceil(Math.max(LEAST_WIDTH, extent.width().inMm() + 2 * PAD));
    Heading heading = new Heading(plate.mark() + "  " + plate.name(), heading(), width);
    double height = extent.height().inMm() + PAD + heading.height();
    PaperPoint corner = new PaperPoint((width - extent.width().inMm()) / 2, PAD);
    List<Figure> figures = new ArrayList<>(outlines(corner));
    figures.addAll(face().figures(corner));
    mark(corner).ifPresent(figures::add);
    figures.addAll(heading.figures(0, height));
    return new Draft(
        "templates/" + plate.mark(),
        "Jig plate " + plate.mark() + ", " + plate.name(),
        use(),
        Length.roundedMm(width),
        Length.roundedMm(height),
        figures,
        face().whole(corner));
  }

  private List<Figure> outlines(PaperPoint corner) {
    OutlineView view = new OutlineView(new Scale(1, 1), corner.x(), corner.y());
    return Stream.concat(Stream.of(plate.boundary()), plate.openings().stream())
        .flatMap(outline -> view.figures(outline).stream())
        .toList();
  }

  private MarkedFace face() {
    List<MarkedFace.Spot> bores =
        plate.bores().stream()
            .map(bore -> new MarkedFace.Spot(bore.centre(), bore.diameter(), ""))
            .toList();
    return new MarkedFace(extent.width(), extent.height(), List.of(), List.of(), List.of(), bores);
  }

  /** Its mark in the middle of the largest clear round of the plate, if there is room. */
  private Optional<Figure> mark(PaperPoint corner) {
    List<Outline> cut = Stream.concat(plate.openings().stream(), plate.bores().stream()).toList();
    MaximumInscribedCircle clear =
        new MaximumInscribedCircle(Polygons.of(plate.boundary(), cut), CLEAR);
    double reach = Math.hypot(MARK, Lettering.width(plate.mark(), MARK)) / 2 + CLEAR;
    if (clear.getRadiusLine().getLength() < reach) {
      return Optional.empty();
    }
    Coordinate middle = clear.getCenter().getCoordinate();
    return Optional.of(
        Paragraph.text(
            corner.x() + middle.x,
            corner.y() + middle.y - MARK / 2,
            MARK,
            plate.mark(),
            Figure.Align.MIDDLE));
  }

  private List<String> heading() {
    List<String> lines = new ArrayList<>();
    lines.add("Scale 1:1, " + plate.quantity() + " off");
    lines.add("From sheet " + lengths.withUnit(plate.thickness()) + " thick");
    lines.add("Over all " + lengths.section(extent.width(), extent.height()));
    plate.bores().stream()
        .map(bore -> "Bore Ø " + lengths.withUnit(bore.diameter()))
        .distinct()
        .forEach(lines::add);
    return lines;
  }

  private List<String> use() {
    return List.of(
        Advice.CHECK,
        "Print it "
            + plate.quantity()
            + (plate.quantity() == 1 ? " time" : " times")
            + " and glue it on the sheet with little, thick glue, since wet paper grows; or stack"
            + " the sheets and cut all of them under one print.",
        "Measure over all before the glue sets: it must be "
            + lengths.section(extent.width(), extent.height())
            + ".",
        "Prick and bore the holes first, then the openings, the edge last; cut to the middle of the"
            + " line, and ease slots with a file until the plates go together.",
        Advice.SAWING);
  }
}
