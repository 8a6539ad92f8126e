package org.slatwright.exporter.dxf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.RecordingDestination;

/** A plan written as DXF in one way. */
record Written(Plan plan, String version, String units) {

  /** A plan in each version and unit; R12, always in mm, with the one that it does not heed. */
  static List<Written> inEveryWay(Plan plan) {
    return List.of(
        new Written(plan, "R2000", "plan"),
        new Written(plan, "R2000", "mm"),
        new Written(plan, "R2000", "inch"),
        new Written(plan, "R12", "inch"));
  }

  /** The text of each pattern's file, in their order. */
  List<String> texts() throws IOException {
    RecordingDestination files = files();
    return plan.patterns().stream().map(pattern -> files.text(pattern.name() + ".dxf")).toList();
  }

  private RecordingDestination files() throws IOException {
    DxfExporter exporter = new DxfExporter();
    RecordingDestination destination = new RecordingDestination();
    Map<String, String> choice = Map.of("version", version, "units", units);
    exporter.export(plan, OptionValues.of(exporter.options(), choice), destination);
    return destination;
  }

  /** How many millimetres one unit of its coordinates is. */
  double mmPerUnit() {
    boolean planInInches = plan.lengths().unit() == Unit.INCH;
    boolean inches = units.equals("inch") || units.equals("plan") && planInInches;
    return inches && version.equals("R2000") ? 25.4 : 1;
  }
}
