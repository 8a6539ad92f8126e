package org.slatwright.exporter.csv;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Face;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Shape;
import org.slatwright.api.plan.CutLine;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plan;

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

  /** Cut list, hole list and findings. */
  List<Table> all() {
    return List.of(cutList(), holeList(), findings());
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
        new Cell.Number(Integer.toString(part.quantity())),
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
        text(hole.through() ? "yes" : "no"));
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

  private Table findings() {
    List<String> header = List.of("severity", "subject", "message", "advice", "source");
    return new Table(
        Plan.FINDINGS, header, plan.findings().stream().map(PlanTables::findingRow).toList());
  }

  private static List<Cell> findingRow(Finding finding) {
    return List.of(
        text(finding.severity().word()),
        text(finding.subject()),
        text(finding.message()),
        text(finding.advice()),
        text(finding.source()));
  }

  private String withUnit(String column) {
    return column + " (" + plan.lengths().unit().symbol() + ")";
  }

  private Cell number(Length length) {
    return new Cell.Number(spelling.apply(length));
  }

  private static Cell text(String content) {
    return new Cell.Text(content);
  }
}
