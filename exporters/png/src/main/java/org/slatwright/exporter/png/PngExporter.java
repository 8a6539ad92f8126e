package org.slatwright.exporter.png;

import java.io.IOException;
import java.util.List;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/**
 * Writes every sheet as a picture. Templates are left out: they are to be printed true to size,
 * which no program promises of a picture.
 */
public final class PngExporter implements Exporter {

  private static final ExportOption RESOLUTION =
      new ExportOption(
          "resolution",
          "dots an inch: upright A4 is 1240 dots wide at 150, 620 at 75",
          List.of("150", "75"));

  @Override
  public String format() {
    return "png";
  }

  @Override
  public String description() {
    return "drawing sheets as pictures, to publish the plan";
  }

  @Override
  public List<ExportOption> options() {
    return List.of(RESOLUTION);
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination) throws IOException {
    int dotsPerInch = Integer.parseInt(options.value(RESOLUTION.name()));
    try (GlyphOutlines glyphs = GlyphOutlines.open()) {
      for (Sheet sheet : plan.sheets()) {
        Picture picture = Picture.of(sheet, glyphs, dotsPerInch);
        destination.file(
            sheet.name() + ".png", out -> new PngWriter(out).write(picture, sheet.title()));
      }
    }
  }
}
