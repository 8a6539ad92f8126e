package org.slatwright.exporter.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;
import org.slatwright.testkit.SamplePlans;

class TemplatesTest {

  @Test
  void everyPageAndEveryWholeTemplateIsAFile() throws ExportException, IOException {
    Plan plan = SamplePlans.everyKind();
    Set<String> names = Exported.files(plan, "font").names();
    plan.templates().pages().forEach(page -> assertTrue(names.contains(page.name() + ".svg")));
    plan.templates().whole().forEach(whole -> assertTrue(names.contains(whole.name() + ".svg")));
  }

  /** A plotter or a copy shop prints the file as large as it says it is. */
  @Test
  void aWholeTemplateHasItsTrueSizeAndSaysHowToUseIt() throws ExportException, IOException {
    Plan plan = SamplePlans.everyKind();
    Template template = plan.templates().whole().get(0);
    RecordingDestination files = Exported.files(plan, "font");
    String svg = new String(files.bytes(template.name() + ".svg"), StandardCharsets.UTF_8);
    assertTrue(svg.contains("width=\"44mm\""), svg);
    assertTrue(svg.contains("height=\"400mm\""), svg);
    assertTrue(svg.contains("viewBox=\"0 0 44 400\""), svg);
    assertTrue(svg.contains("@page{size:44mm 400mm;margin:0}"), svg);
    assertTrue(svg.contains("<desc id=\"desc\">Print at 100 %. Glue it on.</desc>"), svg);
    // The hole 300 mm up lies 100 mm from the upper edge.
    assertTrue(svg.contains("<circle class=\"line-thin\" cx=\"22\" cy=\"100\" r=\"5\""), svg);
    assertEquals(1, svg.split("<circle", -1).length - 1);
  }
}
