package org.slatwright.exporter.dxf;

import java.io.IOException;
import java.util.List;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plan;

/** Writes every pattern of a plan as one DXF file, real size. */
public final class DxfExporter implements Exporter {

  private static final String R2000 = "R2000";
  private static final String R12 = "R12";
  private static final String PLAN = "plan";
  private static final String MM = "mm";
  private static final String INCH = "inch";

  private static final ExportOption VERSION =
      new ExportOption(
          "version",
          "the DXF version; R12 only for programs that read nothing newer",
          List.of(R2000, R12));
  private static final ExportOption UNITS =
      new ExportOption(
          "units",
          "the unit of the coordinates: the plan's own, or this one; R12 cannot name its unit and is"
              + " always in mm",
          List.of(PLAN, MM, INCH));

  @Override
  public String format() {
    return "dxf";
  }

  @Override
  public String description() {
    return "jig plates and drilled parts for a router, a laser or a CNC, real size";
  }

  @Override
  public List<ExportOption> options() {
    return List.of(VERSION, UNITS);
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination) throws IOException {
    boolean old = options.value(VERSION.name()).equals(R12);
    Unit unit = old ? Unit.MM : unit(options.value(UNITS.name()), plan);
    DxfDocument document = old ? new R12Document() : new R2000Document();
    for (Pattern pattern : plan.patterns()) {
      Drawing drawing = Drawing.of(pattern, unit);
      destination.file(
          pattern.name() + ".dxf",
          out -> {
            DxfTagWriter tags = new DxfTagWriter(out, unit);
            document.write(drawing, tags);
            tags.flush();
          });
    }
  }

  private static Unit unit(String chosen, Plan plan) {
    return switch (chosen) {
      case MM -> Unit.MM;
      case INCH -> Unit.INCH;
      default -> plan.lengths().unit();
    };
  }
}
