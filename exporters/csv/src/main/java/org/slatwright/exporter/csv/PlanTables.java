package org.slatwright.exporter.csv;

import static org.slatwright.exporter.csv.Cells.count;
import static org.slatwright.exporter.csv.Cells.none;
import static org.slatwright.exporter.csv.Cells.text;
import static org.slatwright.exporter.csv.Cells.yesOrNo;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;

/** The tables of a plan. */
final class PlanTables {

  private static final Set<String> OPTIONAL = Set.of(Plan.FITS, Plan.ORDER_OF_WORK);

  private final Plan plan;
  private final Cells cells;

  /**
   * Of one plan.
   *
   * @param spelling how a length is written, in the plan's unit and without naming it
   */
  PlanTables(Plan plan, Function<Length, String> spelling) {
    this.plan = plan;
    this.cells = new Cells(plan.lengths().unit(), spelling);
  }

  /**
   * In the order that they are needed; what fits is left out when nothing is to be held, the order
   * of work when there is none, and of cutting whatever has nothing to say.
   */
  List<Table> all() {
    Stream<Table> last =
        Stream.of(holeList(), quantities(), fits(), orderOfWork(), findings())
            .filter(table -> !OPTIONAL.contains(table.name()) || !table.rows().isEmpty());
    Stream<Table> cutting = new CuttingTables(plan, cells).all();
    return Stream.of(Stream.of(cutList()), cutting, last).flatMap(tables -> tables).toList();
  }

  private Table cutList() {
    List<String> header =
        List.of(
            "mark",
            "part",
            "quantity",
            cells.withUnit("length"),
            cells.withUnit("width"),
            cells.withUnit("thickness"),
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
        cells.length(shape.length()),
        cells.length(shape.width()),
        cells.length(shape.thickness()),
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
            cells.withUnit("diameter"),
            cells.withUnit("depth"),
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
        cells.length(hole.diameter()),
        cells.length(hole.depth()),
        yesOrNo(hole.through()));
  }

  private String distanceFrom(Face face) {
    return cells.withUnit("distance from " + face.word());
  }

  /** Two distances mark a hole out on its face; the third is empty, for the face itself says it. */
  private Cell distance(Hole hole, Face from) {
    if (hole.face().alongFrom() == from) {
      return cells.length(hole.along());
    }
    return hole.face().acrossFrom() == from ? cells.length(hole.across()) : none();
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
    if (!plan.cutting().volume().equals(Volume.ZERO)) {
      rows.add(amount("timber to buy", "", plan.cutting().volume().withUnit(unit)));
    }
    return new Table(Plan.QUANTITIES, List.of("quantity", "part", "value", "unit"), rows);
  }

  private List<Cell> length(String quantity, Length length) {
    Cell unit = text(plan.lengths().unit().symbol());
    return List.of(text(quantity), none(), cells.length(length), unit);
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
            cells.withUnit("spare across"),
            cells.withUnit("spare deep"),
            cells.withUnit("spare above"),
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
        fit.high().map(Cells::count).orElse(none()),
        cells.length(fit.spareAcross()),
        cells.length(fit.spareDeep()),
        fit.spareAbove().map(cells::length).orElse(none()),
        yesOrNo(fit.enough()));
  }

  private Table orderOfWork() {
    List<String> header =
        List.of(
            "step",
            "title",
            "after",
            "how",
            "parts",
            "tools",
            "supplies",
            "work (min)",
            "then wait (min)",
            "check",
            "caution");
    return new Table(
        Plan.ORDER_OF_WORK, header, plan.work().steps().stream().map(this::stepRow).toList());
  }

  private List<Cell> stepRow(Step step) {
    return List.of(
        count(step.number()),
        text(step.title()),
        text(joined(", ", step.after().stream().map(String::valueOf))),
        text(joined(" ", step.doing().stream().map(this::said))),
        text(joined(", ", step.parts().stream().map(each -> each.count() + " " + each.mark()))),
        text(String.join(", ", step.tools())),
        text(joined(", ", step.supplies().stream().map(this::said))),
        count(step.work().count()),
        step.then().map(wait -> count(wait.time().count())).orElse(none()),
        text(said(step.check())),
        text(step.caution()));
  }

  private String said(Wording wording) {
    return wording.in(plan.lengths());
  }

  private static String joined(String between, Stream<String> texts) {
    return texts.collect(Collectors.joining(between));
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
}
