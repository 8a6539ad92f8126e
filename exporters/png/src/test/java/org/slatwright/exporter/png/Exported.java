package org.slatwright.exporter.png;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.drawing.View;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;

/** Sheets as the exporter writes them, and as the JDK reads them. */
final class Exported {

  private Exported() {}

  /** All files of a plan. */
  static RecordingDestination files(Plan plan, int dotsPerInch) throws IOException {
    PngExporter exporter = new PngExporter();
    RecordingDestination destination = new RecordingDestination();
    Map<String, String> given = Map.of("resolution", Integer.toString(dotsPerInch));
    exporter.export(plan, OptionValues.of(exporter.options(), given), destination);
    return destination;
  }

  /** The file of one sheet. */
  static byte[] file(Sheet sheet, int dotsPerInch) throws IOException {
    Plan plan = SamplePlans.withDrawings(SamplePlans.everyKind(), List.of(sheet), Templates.NONE);
    return files(plan, dotsPerInch).bytes(sheet.name() + ".png");
  }

  /** Figures alone, on landscape A4. */
  static Sheet sheet(Figure... figures) {
    return sheet("Plain", Paper.A4, true, figures);
  }

  static Sheet sheet(String title, Paper paper, boolean landscape, Figure... figures) {
    View view = new View("view", "View", Optional.empty(), List.of(figures));
    return new Sheet("drawings/01-plain", title, paper, landscape, List.of(view));
  }
}
