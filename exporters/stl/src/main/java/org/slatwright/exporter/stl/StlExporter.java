package org.slatwright.exporter.stl;

import java.io.IOException;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.model.Solid;
import org.slatwright.api.plan.Plan;

/** Writes every solid of the plan as one binary STL file, in millimetres. */
public final class StlExporter implements Exporter {

  @Override
  public String format() {
    return "stl";
  }

  @Override
  public String description() {
    return "the drilling jig for a 3-D printer, in millimetres";
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination) throws IOException {
    for (Solid solid : plan.solids()) {
      byte[] stl = BinaryStl.of(solid);
      destination.file(solid.name() + ".stl", out -> out.write(stl));
    }
  }
}
