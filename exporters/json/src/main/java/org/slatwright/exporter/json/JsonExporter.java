package org.slatwright.exporter.json;

import java.io.IOException;
import java.io.InputStream;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/** Writes the whole plan as JSON, with its schema beside it. */
public final class JsonExporter implements Exporter {

  /** The JSON Schema of the file: a resource beside this class, and written beside the plan. */
  static final String SCHEMA = "plan.schema.json";

  @Override
  public String format() {
    return "json";
  }

  @Override
  public String description() {
    return "the whole plan as data, for programs, with its JSON Schema";
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination)
      throws ExportException, IOException {
    try (InputStream schema = JsonExporter.class.getResourceAsStream(SCHEMA)) {
      if (schema == null) {
        throw new ExportException("the json exporter's jar lacks " + SCHEMA);
      }
      destination.file(Plan.MODEL + ".json", out -> PlanJson.write(plan, new JsonWriter(out)));
      destination.file(SCHEMA, schema::transferTo);
    }
  }
}
