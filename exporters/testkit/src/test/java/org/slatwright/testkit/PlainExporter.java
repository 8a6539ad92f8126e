package org.slatwright.testkit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/** Keeps every rule. The bad exporters are this one, spoilt in one place each. */
public class PlainExporter implements Exporter {

  @Override
  public String format() {
    return "plain";
  }

  @Override
  public String description() {
    return "The title as text";
  }

  @Override
  public List<ExportOption> options() {
    return List.of(
        new ExportOption("letters", "Small or as they are", List.of("as-given", "small")));
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination)
      throws ExportException, IOException {
    byte[] bytes = text(plan, options).getBytes(StandardCharsets.UTF_8);
    destination.file("title.txt", out -> out.write(bytes));
  }

  /** What the file says. */
  protected String text(Plan plan, OptionValues options) {
    String text = plan.title() + " " + plan.assembly().pieces().size() + " pieces";
    return options.value("letters").equals("small")
        ? text.toLowerCase(java.util.Locale.ROOT)
        : text;
  }
}
