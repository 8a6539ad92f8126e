package org.slatwright.exporter.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;

/** The tables of a plan. */
final class PlanTables {

  private final Plan plan;
  private final Function<Length, String> spelling;

  /**
   * Of one plan.
   *
   * @param spelling how a length is written, in the plan's unit and without naming it
   */
  PlanTables(Plan plan, Function<Length, String> spelling) {
    this.plan = plan;
    this.spelling = spelling;
  }

  /** In the order that they are needed; what fits is left out when nothing is to be held. */
  List<Table> all() {
    return Stream.of(cutList(), holeList(), quantities(), fits(), findings())
        .filter(table -> !table.name().equals(Plan.FITS) || !table.rows().isEmpty())
        .toList();
  }

  private Table cutList() {
    List<String> header =
        List.of(
            "mark",
            "part",
            "quantity",
            withUnit("length"),
            withUnit("width"),
            withUnit("thickness"),
            "timber",
            "note");
    return new Table(Plan.CUT_LIST, header, plan.cutList().stream().map(this::cutRow).toList());
  }

  private List<Cell> cutRow(CutLine line) {
    Part part = line.part();
    Shape shape = part.shape();
    return List.of(
        text(part.mark()),
        text(part.name()),
        count(part.quantity()),
        number(shape.length()),
        number(shape.width()),
        number(shape.thickness()),
        text(line.timber()),
        text(line.note()));
  }

  private Table holeList() {
    List<String> header =
        List.of(
            "part",
            "hole",
            "face",
            distanceFrom(Face.START_END),
            distanceFrom(Face.FACE_EDGE),
            distanceFrom(Face.BACK),
            withUnit("diameter"),
            withUnit("depth"),
            "through");
    return new Table(Plan.HOLE_LIST, header, holeRows().toList());
  }

  private Stream<List<Cell>> holeRows() {
    return plan.assembly().parts().stream()
        .flatMap(part -> part.holes().stream().map(hole -> holeRow(part, hole)));
  }

  private List<Cell> holeRow(Part part, Hole hole) {
    return List.of(
        text(part.mark()),
        text(hole.name()),
        text(hole.face().word()),
        distance(hole, Face.START_END),
        distance(hole, Face.FACE_EDGE),
        distance(hole, Face.BACK),
        number(hole.diameter()),
        number(hole.depth()),
        yesOrNo(hole.through()));
  }

  private String distanceFrom(Face face) {
    return withUnit("distance from " + face.word());
  }

  /** Two distances mark a hole out on its face; the third is empty, for the face itself says it. */
  private Cell distance(Hole hole, Face from) {
    if (hole.face().alongFrom() == from) {
      return number(hole.along());
    }
    return hole.face().acrossFrom() == from ? number(hole.across()) : text("");
  }

  /** One value a row, since each has a unit of its own. */
  private Table quantities() {
    Quantities all = plan.quantities();
    Unit unit = plan.lengths().unit();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(amount("mass of the empty rack", "", all.mass().withUnit(unit)));
    rows.add(
        length(
            "centre of gravity from the left", plan.lengths().rounded(all.centreOfGravity().x())));
    rows.add(
        length(
            "centre of gravity from the front", plan.lengths().rounded(all.centreOfGravity().y())));
    rows.add(
        length(
            "centre of gravity above the floor",
            plan.lengths().rounded(all.centreOfGravity().z())));
    for (Quantities.PartMass part : all.parts()) {
      rows.add(amount("mass of one piece", part.part().mark(), part.each().withUnit(unit)));
    }
    rows.add(amount("finish area", "", all.finishArea().withUnit(unit)));
    rows.add(amount("glue", "", all.glue().withUnit(unit)));
    rows.add(amount("dowels", "", all.dowels() + " pieces"));
    rows.add(length("dowel rod", all.dowelRod()));
    rows.add(amount("fixings", "", all.fixings() + " pieces"));
    return new Table(Plan.QUANTITIES, List.of("quantity", "part", "value", "unit"), rows);
  }

  private List<Cell> length(String quantity, Length length) {
    Cell unit = text(plan.lengths().unit().symbol());
    return List.of(text(quantity), text(""), number(length), unit);
  }

  /** The same figures as a person reads elsewhere, the number apart from its unit. */
  private static List<Cell> amount(String quantity, String part, String withUnit) {
    int blank = withUnit.indexOf(' ');
    return List.of(
        text(quantity),
        text(part),
        new Cell.Number(withUnit.substring(0, blank)),
        text(withUnit.substring(blank + 1)));
  }

  private Table fits() {
    List<String> header =
        List.of(
            "thing",
            "shelf",
            "turned",
            "across",
            "deep",
            "high",
            withUnit("spare across"),
            withUnit("spare deep"),
            withUnit("spare above"),
            "enough");
    return new Table(Plan.FITS, header, plan.fits().stream().map(this::fitRow).toList());
  }

  private List<Cell> fitRow(Fit fit) {
    return List.of(
        text(fit.thing()),
        count(fit.shelf()),
        yesOrNo(fit.turned()),
        count(fit.across()),
        count(fit.deep()),
        fit.high().map(PlanTables::count).orElse(text("")),
        number(fit.spareAcross()),
        number(fit.spareDeep()),
        fit.spareAbove().map(this::number).orElse(text("")),
        yesOrNo(fit.enough()));
  }

  private Table findings() {
    List<String> header =
        List.of("severity", "rule", "subject", "message", "value", "limit", "advice", "source");
    return new Table(
        Plan.FINDINGS, header, plan.findings().stream().map(PlanTables::findingRow).toList());
  }

  private static List<Cell> findingRow(Finding finding) {
    return List.of(
        text(finding.severity().word()),
        text(finding.rule()),
        text(finding.subject()),
        text(finding.message()),
        text(finding.value()),
        text(finding.limit()),
        text(finding.advice()),
        text(finding.source()));
  }

  private String withUnit(String column) {
    return column + " (" + plan.lengths().unit().symbol() + ")";
  }

  private static Cell count(int count) {
    return new Cell.Number(Integer.toString(count));
  }

  private static Cell yesOrNo(boolean yes) {
    return text(yes ? "yes" : "no");
  }

  private Cell number(Length length) {
    return new Cell.Number(spelling.apply(length));
  }

  private static Cell text(String content) {
    return new Cell.Text(content);
  }
}
