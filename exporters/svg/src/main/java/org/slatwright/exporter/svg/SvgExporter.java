package org.slatwright.exporter.svg;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;
import org.slatwright.exporter.figures.Drawing;
import org.slatwright.exporter.figures.LetteringFont;

/**
 * Writes every sheet, every page of templates and every whole template as one SVG file of its true
 * size.
 */
public final class SvgExporter implements Exporter {

  private static final ExportOption TEXT =
      new ExportOption(
          "text",
          "lettering as text with its font embedded, or as outlines for programs that ignore the"
              + " font",
          List.of("font", "outlines"));

  @Override
  public String format() {
    return "svg";
  }

  @Override
  public String description() {
    return "drawing sheets and templates as SVG, true to size";
  }

  @Override
  public List<ExportOption> options() {
    return List.of(TEXT);
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination)
      throws ExportException, IOException {
    boolean outlines = options.value(TEXT.name()).equals("outlines");
    try (LetteringFont font = LetteringFont.open()) {
      for (Drawing drawing : drawings(plan)) {
        byte[] svg = new SheetWriter(drawing, font, outlines).write();
        destination.file(drawing.name() + ".svg", out -> out.write(svg));
      }
    }
  }

  private static List<Drawing> drawings(Plan plan) {
    Stream<Drawing> sheets =
        Stream.concat(plan.sheets().stream(), plan.templates().pages().stream()).map(Drawing::of);
    return Stream.concat(sheets, plan.templates().whole().stream().map(Drawing::of)).toList();
  }
}
