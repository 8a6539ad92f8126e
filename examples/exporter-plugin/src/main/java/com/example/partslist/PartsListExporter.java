package com.example.partslist;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/**
 * Writes {@code parts-list.md}: the parts to cut and the findings as Markdown, for a workshop blog
 * or a shared notebook.
 */
public class PartsListExporter implements Exporter {

  static final String TICK_BOXES = "tick-boxes";

  @Override
  public String format() {
    return "md";
  }

  @Override
  public String description() {
    return "parts list and findings as Markdown";
  }

  @Override
  public List<ExportOption> options() {
    return List.of(
        new ExportOption(
            TICK_BOXES, "a box to tick off each piece when it is cut", List.of("no", "yes")));
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination) throws IOException {
    String text = new PartsList(plan, options.value(TICK_BOXES).equals("yes")).text();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    destination.file("parts-list.md", out -> out.write(bytes));
  }
}
