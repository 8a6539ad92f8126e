package org.slatwright.exporter.html;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/** Writes the whole plan as one page that needs no network, for a phone at the bench. */
public final class HtmlExporter implements Exporter {

  @Override
  public String format() {
    return "html";
  }

  @Override
  public String description() {
    return "the whole plan as one web page for the bench, with boxes to tick; works offline";
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination)
      throws ExportException, IOException {
    byte[] page = new PlanPage(plan).html().getBytes(StandardCharsets.UTF_8);
    destination.file(Plan.PLAN_BOOK + ".html", out -> out.write(page));
  }
}
