package org.slatwright.exporter.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.drawing.View;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;

/** Books as the exporter writes them. */
final class Exported {

  static final String PLAN = "plan-book.pdf";
  static final String TEMPLATES = "templates.pdf";

  private Exported() {}

  /** All files of a plan, with default options. */
  static RecordingDestination files(Plan plan) throws ExportException, IOException {
    return files(plan, Map.of());
  }

  /** All files of a plan, with options. */
  static RecordingDestination files(Plan plan, Map<String, String> given)
      throws ExportException, IOException {
    PdfExporter exporter = new PdfExporter();
    RecordingDestination destination = new RecordingDestination();
    exporter.export(plan, OptionValues.of(exporter.options(), given), destination);
    return destination;
  }

  /** A plan with one sheet of those figures, on landscape A4, and no template. */
  static Plan planOf(Figure... figures) {
    return plan(List.of(sheet("Plain", figures)), List.of());
  }

  /** A plan with those drawings alone. */
  static Plan plan(List<Sheet> sheets, List<Sheet> templatePages) {
    return SamplePlans.withDrawings(
        SamplePlans.everyKind(), sheets, new Templates(List.of(), templatePages));
  }

  /** On landscape A4. */
  static Sheet sheet(String title, Figure... figures) {
    return new Sheet(
        "drawings/sheet",
        title,
        Paper.A4,
        true,
        List.of(new View("view", "View", Optional.empty(), List.of(figures))));
  }
}
